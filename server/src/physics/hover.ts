/** Hovering by momentum theory: the power no craft can do without. It must not know the parts. */

/**
 * Least power in W to hold a thrust with an open disc: T^1.5/√(2ρA), the actuator disc of momentum theory (Rankine, Froude).
 * @param thrust N of one propeller @param diameter m @param density kg/m³
 */
export const idealHoverPower = (thrust: number, diameter: number, density: number): number =>
  thrust > 0 ? thrust ** 1.5 / Math.sqrt(2 * density * discArea(diameter)) : 0;

/** Speed in m/s of the air through the disc at that thrust. */
export const inducedSpeed = (thrust: number, diameter: number, density: number): number =>
  thrust > 0 ? Math.sqrt(thrust / (2 * density * discArea(diameter))) : 0;

/** m² */
export const discArea = (diameter: number): number => (Math.PI / 4) * diameter * diameter;
