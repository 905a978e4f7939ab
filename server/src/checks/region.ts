/** The profile of rules that a craft is held against, and how a finding that rests on it ends. */
import type { Craft } from '../build/craft';
import { profileOf, type RulesProfile, regionFact } from '../plan/rules';

export const profileFor = (craft: Craft): RulesProfile | undefined => profileOf(regionFact(craft)?.value);

export const hasProfile = (craft: Craft): boolean => profileFor(craft) !== undefined;

/** Said at the end of every finding that rests on a profile. */
export const dated = (profile: RulesProfile): string =>
  `Profile ${profile.name} as of ${profile.asOf}; rules change, ask locally.`;
