/** Writes a figure of the card with its range, in the units of the trade. One place, so that every face shows the same digits. */
import { G } from '../physics/constants';
import type { CardFigure } from './card-figure';

interface Scale {
  readonly factor: number;
  readonly unit: string;
  readonly digits: (value: number) => number;
}

const scales: Readonly<Record<CardFigure['unit'], Scale>> = {
  kg: { factor: 1000, unit: 'g', digits: (v) => (v < 100 ? 1 : 0) },
  N: { factor: 1000 / G, unit: 'g', digits: () => 0 },
  A: { factor: 1, unit: 'A', digits: (v) => (v < 20 ? 1 : 0) },
  V: { factor: 1, unit: 'V', digits: () => 2 },
  W: { factor: 1, unit: 'W', digits: (v) => (v < 0.995 ? 2 : v < 20 ? 1 : 0) },
  s: { factor: 1 / 60, unit: 'min', digits: () => 1 },
  '1': { factor: 1, unit: '', digits: () => 1 },
  'm/s': { factor: 1, unit: 'm/s', digits: () => 0 },
  '1/s': { factor: 60, unit: 'rpm', digits: () => 0 },
  'N/W': { factor: 1000 / G, unit: 'g/W', digits: () => 1 },
  m: { factor: 1000, unit: 'mm', digits: () => 0 },
  K: { factor: 1, unit: 'K', digits: () => 0 },
  'N/m²': { factor: 1, unit: 'N/m²', digits: () => 0 },
  A·h: { factor: 1000, unit: 'mAh', digits: () => 0 },
  W·h: { factor: 1, unit: 'Wh', digits: () => 1 },
};

/** Shares of one that the trade reads in percent. */
const isShare = (name: string): boolean => /(?:^|-)(?:throttle|load|burst)$/.test(name);

function scaleOf(figure: CardFigure): Scale {
  if (figure.unit === '1' && isShare(figure.name)) return { factor: 100, unit: '%', digits: () => 0 };
  if (figure.name.endsWith('tip-mach')) return { ...scales['1'], digits: () => 2 };
  if (figure.name.endsWith('-reach')) return reach(figure.value);
  if (figure.unit === '1/s') return { factor: 60, unit: 'rpm', digits: () => 0 };
  return scales[figure.unit];
}

/** Hundreds of metres, and two digits of kilometres: the model knows no more. */
const reach = (metres: number): Scale =>
  metres < 1000
    ? { factor: 1, unit: 'm', digits: () => 0 }
    : { factor: 1e-3, unit: 'km', digits: (v) => (v < 10 ? 1 : 0) };

/** `4.6 min`, without its range. */
export function valueText(figure: CardFigure): string {
  const { factor, unit, digits } = scaleOf(figure);
  const value = figure.value * factor;
  return `${value.toFixed(digits(Math.abs(value)))}${unit ? ` ${unit}` : ''}`;
}

/** `3.9 to 5.4`, in the unit of the value; empty when the range is no wider than a digit. */
export function rangeText(figure: CardFigure): string {
  const { factor, digits } = scaleOf(figure);
  const places = digits(Math.abs(figure.value * factor));
  const low = (figure.low * factor).toFixed(places);
  const high = (figure.high * factor).toFixed(places);
  return low === high ? '' : `${low} to ${high}`;
}

export const figureText = (figure: CardFigure): string => {
  const range = rangeText(figure);
  return range ? `${valueText(figure)} (${range})` : valueText(figure);
};

/** In the unit of the trade, for drawing. */
export function scaledFigure(figure: CardFigure): { value: number; low: number; high: number; unit: string } {
  const { factor, unit } = scaleOf(figure);
  return { value: figure.value * factor, low: figure.low * factor, high: figure.high * factor, unit };
}
