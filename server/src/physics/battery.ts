/**
 * A flight pack: its open-circuit voltage over the charge, its resistance, and its landing voltage. It must not know
 * what draws the current.
 *
 * The open-circuit tables, the resistance law and the landing voltages are from memory of common cells, not read from
 * a data sheet; a measured pack resistance or a maker's landing voltage replaces the last two.
 */
import { clamp } from './constants';

export type Chemistry = 'lipo' | 'lihv' | 'li-ion';

export interface PackInput {
  readonly cells: number;
  /** Groups in parallel; only informative, `capacity` is the whole pack's. */
  readonly parallel?: number;
  readonly chemistry: Chemistry;
  /** Ah, the whole pack. */
  readonly capacity: number;
  /** The C figure on the label. */
  readonly dischargeRating?: number;
  /** Loaded voltage per cell at which the pilot lands, V: the maker's or the builder's own. */
  readonly landingVoltage?: number;
}

/** Cell voltage at rest by charge 0, 0.1 … 1.0 (from memory, cells near 25 °C at the end of a slow discharge). */
const OPEN_VOLTAGE: Readonly<Record<Chemistry, readonly number[]>> = {
  lipo: [3.3, 3.68, 3.73, 3.77, 3.79, 3.82, 3.87, 3.93, 4.01, 4.09, 4.2],
  lihv: [3.3, 3.69, 3.74, 3.78, 3.82, 3.87, 3.94, 4.03, 4.13, 4.23, 4.35],
  'li-ion': [2.7, 3.25, 3.44, 3.54, 3.62, 3.69, 3.78, 3.87, 3.96, 4.06, 4.18],
};

const LANDING_VOLTAGE: Readonly<Record<Chemistry, number>> = { lipo: 3.3, lihv: 3.3, 'li-ion': 2.9 };

/** Cell voltage at rest. @param charge 0 (empty) … 1 (full), held inside */
export function openVoltage(chemistry: Chemistry, charge: number): number {
  const table = OPEN_VOLTAGE[chemistry];
  const at = clamp(charge, 0, 1) * 10;
  const i = Math.min(9, Math.floor(at));
  const low = table[i] as number;
  const high = table[i + 1] as number;
  return low + (high - low) * (at - i);
}

/** Landing voltage under load, V per cell: the given one first, else the chemistry's own. */
export const landingVoltage = (pack: PackInput): number =>
  pack.landingVoltage !== undefined && Number.isFinite(pack.landingVoltage)
    ? clamp(pack.landingVoltage, 2, 4.2)
    : LANDING_VOLTAGE[pack.chemistry];

/** A C label above this is not believed. */
const BELIEVABLE_C = 90;
/** Leads, plug and solder joints of a pack, Ω. */
const LEADS = 0.004;

/**
 * Resistance in Ω of a warm pack with its leads, from the label (a judgement: cells of one label differ by half).
 * A cell that may give C·Ah amperes is taken to lose about 0.6 V in doing so.
 */
export function estimatedResistance(pack: PackInput): number {
  const c = clamp(pack.dischargeRating ?? (pack.chemistry === 'li-ion' ? 10 : 60), 1, BELIEVABLE_C);
  const cell = clamp(0.6 / (c * pack.capacity), 1e-3, 0.15);
  return pack.cells * cell + LEADS;
}
