/** The units that a build file may use, by dimension, with their factor to the unit the engine computes in. Nothing else converts. */

/** Factor: engine units for one of this unit. Engine units are SI, but ampere-hours for charge and degrees Celsius for temperature. */
const table = {
  mass: { g: 1e-3, kg: 1, oz: 0.028349523125, lb: 0.45359237 },
  length: { mm: 1e-3, cm: 1e-2, m: 1, in: 0.0254, inch: 0.0254, '"': 0.0254 },
  voltage: { V: 1, mV: 1e-3 },
  current: { A: 1, mA: 1e-3 },
  resistance: { mOhm: 1e-3, mΩ: 1e-3, Ohm: 1, Ω: 1 },
  charge: { mAh: 1e-3, Ah: 1 },
  capacitance: { uF: 1e-6, µF: 1e-6, μF: 1e-6, mF: 1e-3, F: 1 },
  energy: { Wh: 3600, J: 1 },
  power: { W: 1, mW: 1e-3, kW: 1e3 },
  frequency: { Hz: 1, kHz: 1e3, MHz: 1e6, GHz: 1e9 },
  force: { N: 1, g: 9.80665e-3, gf: 9.80665e-3, kg: 9.80665, kgf: 9.80665 },
  time: { s: 1, min: 60, h: 3600, ms: 1e-3 },
  angle: { deg: 1, '°': 1 },
  temperature: { C: 1, '°C': 1 },
  speed: { 'm/s': 1, 'km/h': 1 / 3.6 },
  share: { '%': 0.01 },
  gain: { dBi: 1 },
  level: { dBm: 1 },
  ratio: { dB: 1 },
  'motor-constant': { 'rpm/V': 1, Kv: 1, KV: 1 },
  spin: { rpm: 1 / 60 },
  'discharge-rate': { C: 1 },
  'sensor-scale': { 'mV/10A': 1 },
  'data-rate': { baud: 1, 'bit/s': 1, 'Mbit/s': 1e6 },
  storage: { MB: 1 },
} as const;

export type Dimension = keyof typeof table;

/** Dimensions whose number is usually written bare, because the trade never says the unit. */
const bareAllowed: ReadonlySet<Dimension> = new Set<Dimension>(['motor-constant', 'data-rate', 'sensor-scale']);

export const units: Readonly<Record<Dimension, Readonly<Record<string, number>>>> = table;

export const dimensionNames: Readonly<Record<Dimension, string>> = {
  mass: 'a mass',
  length: 'a length',
  voltage: 'a voltage',
  current: 'a current',
  resistance: 'a resistance',
  charge: 'a capacity',
  capacitance: 'a capacitance',
  energy: 'an energy',
  power: 'a power',
  frequency: 'a frequency',
  force: 'a thrust',
  time: 'a time',
  angle: 'an angle',
  temperature: 'a temperature',
  speed: 'a speed',
  share: 'a share',
  gain: 'an antenna gain',
  level: 'a signal level',
  ratio: 'a ratio in decibels',
  'motor-constant': 'a motor constant',
  spin: 'a rotation speed',
  'discharge-rate': 'a discharge rating',
  'sensor-scale': 'a current sensor scale',
  'data-rate': 'a data rate',
  storage: 'a storage size',
};

export const isDimension = (word: string): word is Dimension => Object.hasOwn(table, word);

export const mayBeBare = (dimension: Dimension): boolean => bareAllowed.has(dimension);

export const factorOf = (dimension: Dimension, unit: string): number | undefined =>
  Object.hasOwn(table[dimension], unit) ? units[dimension][unit] : undefined;

/** The unit of this dimension that differs from what was written only in case (`MAH`, `Mm`). */
export function unitInOtherCase(dimension: Dimension, unit: string): string | undefined {
  const lower = unit.toLowerCase();
  return Object.keys(table[dimension]).find((known) => known.toLowerCase() === lower);
}

/** What else a unit could measure; for telling the builder that `mm` is no mass. */
export const dimensionOfUnit = (unit: string): Dimension | undefined =>
  (Object.keys(table) as Dimension[]).find((dimension) => Object.hasOwn(table[dimension], unit));
