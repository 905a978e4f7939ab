/** One operating point of a motor and propeller as on a thrust stand, as text and JSON. Lays out; computes nothing. */
import type { Figure, StandPoint } from '../physics';
import { noticeWords } from './figure-words';

/** Names are a promise. */
const rows = [
  ['thrust', 'thrust', 'thrust'],
  ['throttle', 'throttle', 'throttle'],
  ['current', 'current', 'current at the supply'],
  ['motorCurrent', 'motor-current', 'current in the motor'],
  ['power', 'power', 'power from the supply'],
  ['rpm', 'rpm', 'propeller speed'],
  ['tipMach', 'tip-mach', 'tips, of the speed of sound'],
  ['pitchSpeed', 'pitch-speed', 'pitch speed'],
  ['gramsPerWatt', 'thrust-per-power', 'thrust for its power'],
  ['motorHeat', 'motor-heat', 'heat in motor, ESC and leads'],
] as const;

export function pointAsJson({ figures, notices }: StandPoint): unknown {
  const figure = ({ value, low, high, unit }: Figure): unknown => ({ value, low, high, unit });
  return {
    ...Object.fromEntries(rows.map(([key, name]) => [name, figure(figures[key])])),
    remarks: notices.map(noticeWords),
  };
}

export function pointAsText({ figures, notices }: StandPoint): string {
  const lines = rows.map(([key, , title]) => {
    const { value, low, high, unit } = figures[key];
    const said = key === 'throttle' ? ([100, '%'] as const) : ([1, unit === '1' ? '' : unit] as const);
    const number = (x: number): string => digits(x * said[0]);
    const range = number(low) === number(high) ? '' : `   typically ${number(low)} to ${number(high)}`;
    const grams = key === 'thrust' ? ` = ${((value / 9.80665) * 1000).toFixed(0)} g` : '';
    return `${title.padEnd(30)}${`${number(value)} ${said[1]}`.trim()}${grams}${range}`;
  });
  return `${[...lines, ...notices.map(noticeWords)].join('\n')}\n`;
}

/** Three digits that mean something. */
const digits = (value: number): string => (Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3));
