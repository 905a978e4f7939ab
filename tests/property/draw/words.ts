/** How quantities are written by builders, in one of the usual ways. Must not change a value. */
import type { Luck } from './luck';

/** Grams, with where they came from now and then. */
export const grams = (luck: Luck, value: number): string =>
  `${Number(value.toFixed(2))} g${luck.pick(['', '', ' (weighed 2026-10-02)', ' (maker)', ' (seller)'])}`;

export const flag = (value: boolean): string => (value ? 'yes' : 'no');

/** Volts as a range, or one figure when both are the same. */
export const volts = (least: number, most: number): string => (least === most ? `${most} V` : `${least} V - ${most} V`);

export const size = ([length, width, height]: readonly [number, number, number]): string =>
  `${length}x${width}x${height} mm`;

export const numbered = (pins: readonly string[]): Record<string, string> =>
  Object.fromEntries(pins.map((role, i) => [String(i + 1), role]));
