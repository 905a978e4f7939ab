/** Writes a figure of the card with its range, in the units of the trade. One place, so that every face shows the same digits. */
import { G } from '../physics/constants';
import type { CardFigure } from './card';

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
  W: { factor: 1, unit: 'W', digits: (v) => (v < 20 ? 1 : 0) },
  s: { factor: 1 / 60, unit: 'min', digits: () => 1 },
  '1': { factor: 1, unit: '', digits: () => 1 },
  'm/s': { factor: 1, unit: 'm/s', digits: () => 0 },
  '1/s': { factor: 60, unit: 'rpm', digits: () => 0 },
  'N/W': { factor: 1000 / G, unit: 'g/W', digits: () => 1 },
  'N/m²': { factor: 1, unit: 'N/m²', digits: () => 0 },
  A·h: { factor: 1000, unit: 'mAh', digits: () => 0 },
  W·h: { factor: 1, unit: 'Wh', digits: () => 1 },
};

const percentNames = new Set(['hover-throttle']);

function scaleOf(figure: CardFigure): Scale {
  if (percentNames.has(figure.name)) return { factor: 100, unit: '%', digits: () => 0 };
  if (figure.name === 'tip-mach') return { ...scales['1'], digits: () => 2 };
  return scales[figure.unit];
}

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
