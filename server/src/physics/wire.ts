/**
 * Copper wire by gauge: its size, resistance and short-time heating. It must not judge whether a lead is thick enough.
 *
 * Sources: ASTM B258 (geometry of the American wire gauge); copper 0.017241 Ω mm²/m at 20 °C (IEC 60028), 8,960 kg/m³,
 * 385 J/(kg K).
 */

const COPPER_RESISTIVITY = 1.7241e-8; // Ω m at 20 °C
const COPPER_DENSITY = 8960; // kg/m³
const COPPER_HEAT = 385; // J/(kg K)

/** Diameter in m of a solid conductor of this gauge (0 for 1/0, −1 for 2/0). */
export const wireDiameter = (gauge: number): number => 0.127e-3 * 92 ** ((36 - gauge) / 39);

/** Cross-section in m². */
export const wireArea = (gauge: number): number => (Math.PI / 4) * wireDiameter(gauge) ** 2;

/** Resistance in Ω per m at 20 °C, no stranding allowance. */
export const wireResistancePerMetre = (gauge: number): number => COPPER_RESISTIVITY / wireArea(gauge);

/**
 * Temperature rise in K when no heat leaves the copper: the upper bound for a burst of seconds.
 * @param current A, steady over the burst
 * @param area m²
 * @param duration s
 */
export const adiabaticRise = (current: number, area: number, duration: number): number =>
  area > 0 ? ((current / area) ** 2 * COPPER_RESISTIVITY * duration) / (COPPER_DENSITY * COPPER_HEAT) : 0;
