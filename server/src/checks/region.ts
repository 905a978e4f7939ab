/** Whose rules a craft is held against: the build's word, else the bench's, else the workspace's. */
import type { Craft } from '../build/craft';
import type { Fact } from '../build/fact';
import { profileOf, type RulesProfile } from '../plan/rules';

export const regionFact = (craft: Craft): Fact<string> | undefined =>
  craft.said.region ?? craft.bench?.region ?? craft.settings?.region;

export const profileFor = (craft: Craft): RulesProfile | undefined => profileOf(regionFact(craft)?.value);

export const hasProfile = (craft: Craft): boolean => profileFor(craft) !== undefined;

/** Said at the end of every finding that rests on a profile. */
export const dated = (profile: RulesProfile): string =>
  `Profile ${profile.name} as of ${profile.asOf}; rules change, ask locally.`;
