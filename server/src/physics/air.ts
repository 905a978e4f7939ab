/**
 * The air a propeller works in, from height and temperature. It must not know about weather beyond those two.
 *
 * Source: US Standard Atmosphere 1976 (NOAA-S/T 76-1562), troposphere layer; viscosity by Sutherland's law with the
 * constants of the same document.
 */
import { clamp, G } from './constants';

export interface Air {
  /** kg/m³ */
  readonly density: number;
  /** Dynamic viscosity, Pa s. */
  readonly viscosity: number;
  /** m/s */
  readonly speedOfSound: number;
  /** K */
  readonly temperature: number;
}

const SEA_LEVEL_TEMPERATURE = 288.15; // K
const SEA_LEVEL_PRESSURE = 101_325; // Pa
const LAPSE_RATE = 0.0065; // K/m
const GAS_CONSTANT = 287.05287; // J/(kg K), dry air
const HEAT_RATIO = 1.4;
const SUTHERLAND_BETA = 1.458e-6; // kg/(s m K^½)
const SUTHERLAND_S = 110.4; // K

/**
 * Air at a geopotential height.
 * @param altitude m, held to −1,000 … 9,000
 * @param temperature K, held to 220 … 330; the standard temperature of that height when absent
 */
export function airAt(altitude = 0, temperature?: number): Air {
  const h = clamp(Number.isFinite(altitude) ? altitude : 0, -1000, 9000);
  const standard = SEA_LEVEL_TEMPERATURE - LAPSE_RATE * h;
  const t = temperature !== undefined && Number.isFinite(temperature) ? clamp(temperature, 220, 330) : standard;
  const pressure = SEA_LEVEL_PRESSURE * (standard / SEA_LEVEL_TEMPERATURE) ** (G / (LAPSE_RATE * GAS_CONSTANT));
  return {
    density: pressure / (GAS_CONSTANT * t),
    viscosity: (SUTHERLAND_BETA * t ** 1.5) / (t + SUTHERLAND_S),
    speedOfSound: Math.sqrt(HEAT_RATIO * GAS_CONSTANT * t),
    temperature: t,
  };
}
