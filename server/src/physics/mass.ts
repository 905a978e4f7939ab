/** Adds up masses and places, with their spread. It must not guess a mass: a part without one is the caller's affair. */

export interface Range {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface PlacedMass extends Range {
  /** Position along the frame, m, forward of the frame's middle. */
  readonly x: number;
}

/**
 * Sum of masses in kg. Independent spreads add as squares; the spread of one part is never wider than the sum.
 */
export function totalMass(parts: readonly Range[]): Range {
  let value = 0;
  let below = 0;
  let above = 0;
  for (const p of parts) {
    value += p.value;
    below += (p.value - p.low) ** 2;
    above += (p.high - p.value) ** 2;
  }
  return { value, low: value - Math.sqrt(below), high: value + Math.sqrt(above) };
}

/** Centre of mass in m along the frame, or undefined when there is no mass. */
export function centreOfMass(parts: readonly PlacedMass[]): number | undefined {
  let mass = 0;
  let moment = 0;
  for (const p of parts) {
    mass += p.value;
    moment += p.value * p.x;
  }
  return mass > 0 ? moment / mass : undefined;
}
