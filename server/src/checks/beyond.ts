/** Compares a value with its limit: the limit as written is on the right side, though most decimals are a hair more or less in binary. Knows no unit. */

/** Of the larger of the two, and of a thousandth where both are next to nothing: far above what sums and units lose, far below what anybody writes. */
const hair = 1e-9;

export const exceeds = (value: number, limit: number): boolean =>
  value - limit > hair * Math.max(Math.abs(value), Math.abs(limit), 1e-3);

export const fallsShort = (value: number, limit: number): boolean => exceeds(limit, value);
