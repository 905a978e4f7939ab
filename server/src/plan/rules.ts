/**
 * What three regions say about mass, identification and radio of a home-built craft: dated data, chosen by `region:`.
 * Words nothing, and never says what is allowed: a finding may only tell what the profile says.
 */
import type { Craft } from '../build/craft';
import type { Fact } from '../build/fact';

export interface RulesProfile {
  readonly name: string;
  /** When these figures were last compared with their sources. */
  readonly asOf: string;
  readonly source: string;
  /** kg at which something changes, with what changes. */
  readonly masses: readonly { readonly limit: number; readonly below: 'below' | 'up to'; readonly changes: string }[];
  /** kg from which (`below`) or above which (`up to`) identification by radio is expected, and the day from which it is. */
  readonly remoteId?: { readonly limit: number; readonly below: 'below' | 'up to'; readonly from?: string };
  /** A light craft is only a light one below this speed in m/s. */
  readonly lightCraft?: { readonly mass: number; readonly speed: number };
  /** Picture near 5.8 GHz without a licence: radiated power in W, and the span in MHz. */
  readonly video: {
    readonly radiated: number;
    readonly span: readonly [number, number];
    readonly note: string /** Craft fly under a licence there as a rule. */;
    readonly licensed?: true;
  };
  readonly controlBands: readonly string[];
}

/** kg: 0.55 lb */
const poundLimit = 0.55 * 0.45359237;

const profiles: Readonly<Record<'EU' | 'UK' | 'US', RulesProfile>> = {
  EU: {
    name: 'EU',
    asOf: '2026-06',
    source: "Regulation (EU) 2019/947 and the agency's questions and answers, as reported; ERC/REC 70-03 from memory",
    masses: [{ limit: 0.25, below: 'below', changes: 'a home-built craft leaves the lightest category' }],
    lightCraft: { mass: 0.25, speed: 19 },
    video: { radiated: 0.025, span: [5725, 5875], note: 'for short-range devices without a licence' },
    controlBands: ['2.4 GHz', '868 MHz', '433 MHz'],
  },
  UK: {
    name: 'UK',
    asOf: '2026-06',
    source: 'Civil Aviation Authority guidance from 1 January 2026, as reported; IR 2030 from memory',
    masses: [
      { limit: 0.1, below: 'below', changes: 'pilot and operator identities are expected' },
      { limit: 0.25, below: 'below', changes: 'a home-built craft leaves the lightest category' },
    ],
    remoteId: { limit: 0.1, below: 'below', from: '2028-01-01' },
    lightCraft: { mass: 0.25, speed: 19 },
    video: { radiated: 0.025, span: [5725, 5875], note: 'for short-range devices without a licence' },
    controlBands: ['2.4 GHz', '868 MHz', '433 MHz'],
  },
  US: {
    name: 'US',
    asOf: '2026-06',
    source: '14 CFR 48.15 and part 89, 47 CFR 15.249, as reported',
    // 0.55 lb, and that is still within.
    masses: [{ limit: poundLimit, below: 'up to', changes: 'registration is expected' }],
    remoteId: { limit: poundLimit, below: 'up to' },
    video: {
      radiated: 0.00075,
      span: [5725, 5875],
      note: 'for unlicensed devices; an amateur licence has its own limits',
      licensed: true,
    },
    controlBands: ['2.4 GHz', '915 MHz'],
  },
};

export const profileOf = (region: string | undefined): RulesProfile | undefined =>
  region === 'EU' || region === 'UK' || region === 'US' ? profiles[region] : undefined;

/** Whose rules: the build's word, else the bench's, else the workspace's. */
export const regionFact = (craft: Craft): Fact<string> | undefined =>
  craft.said.region ?? craft.bench?.region ?? craft.settings?.region;
