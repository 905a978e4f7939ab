/** What a check is: data about itself, the facts it needs by their paths, and one function that judges them. Runs nothing. */
import type { Craft, Pack } from '../build/craft';
import type { Pointable } from '../build/fact';
import type { Danger, Fix, Severity } from '../build/finding';
import type { FactAt } from '../build/generated/facts';
import type { WorkedAt } from '../plan/worked';

/** The path of a fact (`motors.kv`, `pack.cells`, `bench.radio.link`) or of a figure that is worked out (`worked.motor-current`). */
export type Need = keyof FactAt | keyof WorkedAt;
export type GotAt = FactAt & WorkedAt;

export type Needs = Readonly<Record<string, Need>>;
export type Got<N extends Needs> = { readonly [K in keyof N]: GotAt[N[K]] };

export interface Verdict {
  readonly message: string;
  /** What to underline in the build; the first of `needs` when not said. */
  readonly at?: Pointable;
  /** The other side or sides, each with what it says. */
  readonly with?: readonly { readonly fact: Pointable; readonly says: string }[];
  readonly severity?: Severity;
  readonly danger?: Danger;
  readonly fixes?: readonly Fix[];
  /** Sets several findings of one check at one place apart. */
  readonly apart?: string;
}

export const groups = [
  'structure',
  'mechanical',
  'power',
  'battery',
  'signals',
  'harness',
  'video',
  'radio',
  'propulsion',
  'mass',
  'rules',
  'order',
  'assembly',
  'data',
] as const;
export type Group = (typeof groups)[number];

export interface CheckText {
  /** Kebab-case, names the defect, the same for ever. */
  readonly id: string;
  readonly group: Group;
  /** A few words for lists. */
  readonly title: string;
  readonly severity: Severity;
  readonly danger?: Danger;
}

/** Stands beside each check, under `explanation`: for the page of all checks and for tests, and so not loaded by an editor. */
export interface Explanation {
  /** What goes wrong if nobody minds. */
  readonly why: string;
  /** What to do. */
  readonly remedy: string;
  /** Where the constant or the rule comes from: a document, or "common practice". */
  readonly source: string;
  /** A build with the value that is found marked «so»; run as a test. */
  readonly bad: string;
  /** A build of the same kind in which nothing is found. */
  readonly good: string;
}

export interface Check extends CheckText {
  readonly needs: Needs;
  readonly may: Needs;
  /** Whether the check means anything for this craft, beyond its parts being there. */
  readonly when?: (craft: Craft, pack: Pack | undefined) => boolean;
  readonly judge: (
    facts: Readonly<Record<string, unknown>>,
    craft: Craft,
    pack: Pack | undefined,
  ) => Verdict | readonly Verdict[] | undefined;
}

interface Spec<N extends Needs, M extends Needs> extends CheckText {
  /** Facts without which nothing can be said; when one is missing the check is reported as not run. */
  readonly needs: N;
  /** Facts that sharpen the verdict but may be missing. */
  readonly may?: M;
  readonly when?: (craft: Craft, pack: Pack | undefined) => boolean;
  readonly judge: (
    facts: Got<N> & Partial<Got<M>>,
    craft: Craft,
    pack: Pack | undefined,
  ) => Verdict | readonly Verdict[] | undefined;
}

/** Declares a check with its facts typed by their paths. */
export function check<const N extends Needs, const M extends Needs = Record<never, never>>(spec: Spec<N, M>): Check {
  return { ...spec, may: spec.may ?? {}, judge: spec.judge as Check['judge'] };
}
