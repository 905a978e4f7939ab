/** The typed answer of a calculation that may have no solution. It must not carry sentences: the caller words them. */

/**
 * Why there is no figure.
 * - `bad-input`: a length, mass, count or rating that no real part has (zero, negative or not a number)
 * - `cannot-turn`: the supply cannot start the motor against its own losses at this setting
 * - `cannot-hover`: full throttle lifts less than the weight
 * - `cannot-reach`: full throttle gives less than the thrust asked for
 * - `pack-cannot-deliver`: no voltage exists at which the pack gives this power
 * - `below-landing-voltage`: the loaded pack is under its landing voltage from the start
 */
export type Why =
  | 'bad-input'
  | 'cannot-turn'
  | 'cannot-hover'
  | 'cannot-reach'
  | 'pack-cannot-deliver'
  | 'below-landing-voltage';

export interface Impossible {
  readonly ok: false;
  readonly why: Why;
  /** With `bad-input`: the field at fault, by its path in the input. */
  readonly field?: string;
  /** The numbers a sentence about it needs, SI, named by field. */
  readonly details: Readonly<Record<string, number>>;
}

export type Outcome<T> = { readonly ok: true; readonly value: T } | Impossible;

export const possible = <T>(value: T): Outcome<T> => ({ ok: true, value });

export const impossible = (why: Why, details: Readonly<Record<string, number>> = {}): Impossible => ({
  ok: false,
  why,
  details,
});

export const badInput = (field: string): Impossible => ({ ok: false, why: 'bad-input', field, details: {} });
