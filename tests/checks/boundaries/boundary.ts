/** Limits of checks as data: which value of the check's own bad example is turned, and what is said on either side. Judges nothing. */
import type { Craft, Pack } from '../../../server/src/build/craft';
import type { Severity } from '../../../server/src/build/finding';

/** What a check says of a build; `not asked` where the limit decides whether the check has anything to judge. */
export type Says = 'silent' | 'not asked' | Severity;

/** Values that the example gets besides; an undefined one is taken out. */
export type With = Readonly<Record<string, string | undefined>>;

/** A value, or nothing where the thing itself is one more or less, and what is said of it. */
type Side = readonly [value: string | undefined, says: Says];

/** The last value on one side and the first on the other, both worked out by hand from the trade's rule. */
export interface Edge {
  readonly is: 'edge';
  readonly check: string;
  /** `packs.main.cells`; with `bench.` or `shops.` in front in those documents of the example. */
  readonly at: string;
  readonly last: Side;
  readonly first: Side;
  readonly with: With;
}

/** A limit that a figure of the engine decides: it is closed in on, and held against the rule worked out apart from the check. */
export interface Turn {
  readonly is: 'turn';
  readonly check: string;
  readonly at: string;
  /** The text with this number in it. */
  readonly say: (value: number) => string;
  readonly silent: number;
  readonly found: number;
  /** How finely a builder writes this value. */
  readonly step: number;
  /** How grave what is found has to be: a check may have several limits. */
  readonly grave: Severity;
  /** Whether the trade's rule is broken, from what the engine has of this craft or from first principles. */
  readonly broken: (craft: Craft, pack: Pack | undefined) => boolean;
  readonly with: With;
}

export type Boundary = Edge | Turn;

/** One limit of a check, at the value that decides it. */
export const edge = (check: string, at: string, last: Side, first: Side, besides: With = {}): Boundary => ({
  is: 'edge',
  check,
  at,
  last,
  first,
  with: besides,
});

type Way = Pick<Turn, 'say' | 'silent' | 'found' | 'step' | 'broken'> & Partial<Pick<Turn, 'grave' | 'with'>>;

export const turn = (check: string, at: string, way: Way): Boundary => ({
  grave: 'information',
  with: {},
  ...way,
  is: 'turn',
  check,
  at,
});
