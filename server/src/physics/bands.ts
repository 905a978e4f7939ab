/** A figure with its typical range. It must not word anything. */

export type Unit = '1' | 'N' | 'A' | 'V' | 'W' | 'rpm' | 'm/s' | 'g/W' | 'N/m²' | 'min' | 'mAh' | 'Wh' | 'g';

/** Where a figure rests: on nameplates alone, or on something measured on this craft or its parts. */
export type Basis = 'modelled' | 'calibrated';

export interface Figure {
  readonly value: number;
  /** Ends of the typical range: about four out of five real cases lie inside. */
  readonly low: number;
  readonly high: number;
  readonly unit: Unit;
  readonly basis: Basis;
}

/** Share of real cases meant to lie inside a typical range. */
export const STATED_COVERAGE = 0.8;

/** Half-width of the typical range in standard deviations. */
export const HALF_WIDTH = 1.28;

/** A figure from a value and its standard deviation in logarithms: never below zero, never above `most`. */
export function figureOf(value: number, logSpread: number, unit: Unit, basis: Basis, most = Number.MAX_VALUE): Figure {
  const stretch = Math.exp(Math.min(5, HALF_WIDTH * logSpread));
  return { value, low: value / stretch, high: Math.max(value, Math.min(most, value * stretch)), unit, basis };
}
