/** One figure of the card, and how figures of the physics become one. Data only; faces write it. */
import type { Figure } from '../physics';

export interface CardFigure {
  /** Stable name, the key in JSON. */
  readonly name: string;
  readonly title: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** SI or accepted beside SI, as named in JSON. */
  readonly unit: CardUnit;
  readonly basis: CardBasis;
  /** Shown where there is room for little. */
  readonly glance?: boolean;
}

export type CardUnit =
  | 'kg'
  | 'N'
  | 'A'
  | 'V'
  | 'W'
  | 's'
  | '1'
  | 'm'
  | 'K'
  | 'm/s'
  | '1/s'
  | 'N/W'
  | 'N/m²'
  | 'A·h'
  | 'W·h';

/** What a figure rests on, from best to worst. */
export type CardBasis = 'measured' | 'calibrated' | 'said' | 'modelled' | 'estimate';

interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** From the unit of the physics to that of the card. */
const units: Readonly<Record<Figure['unit'], readonly [factor: number, unit: CardUnit]>> = {
  '1': [1, '1'],
  N: [1, 'N'],
  A: [1, 'A'],
  V: [1, 'V'],
  W: [1, 'W'],
  rpm: [1 / 60, '1/s'],
  'm/s': [1, 'm/s'],
  'g/W': [9.80665e-3, 'N/W'],
  'N/m²': [1, 'N/m²'],
  min: [60, 's'],
  mAh: [1e-3, 'A·h'],
  Wh: [1, 'W·h'],
  g: [1e-3, 'kg'],
};

export function cardFigure(name: string, title: string, figure: Figure, glance = false): CardFigure {
  const [factor, unit] = units[figure.unit];
  return { ...ranged(name, title, figure, unit, figure.basis, factor), ...(glance ? { glance } : {}) };
}

export const ranged = (
  name: string,
  title: string,
  range: Ranged,
  unit: CardUnit,
  basis: CardBasis,
  factor = 1,
): CardFigure => ({
  name,
  title,
  value: range.value * factor,
  low: range.low * factor,
  high: range.high * factor,
  unit,
  basis,
});

export const exactly = (name: string, title: string, value: number, unit: CardUnit, basis: CardBasis): CardFigure =>
  ranged(name, title, { value, low: value, high: value }, unit, basis);

export interface CardGroup {
  readonly question: string;
  /** Heads its line where there is room for little. */
  readonly word?: string;
  readonly figures: readonly CardFigure[];
  readonly remarks: readonly string[];
}
