/** Ways of flying for the tests of the physics; the program's own stand with the classes of craft. */
import type { FlightMix } from '../../server/src/physics';

export type FlyingStyle = 'freestyle' | 'race' | 'long-range' | 'smooth' | 'indoor' | 'lifting';

export const FLIGHT_MIXES: Readonly<Record<FlyingStyle, FlightMix>> = {
  freestyle: { hover: 0.2, cruise: 0.5, punch: 0.3, cruiseThrust: 1.5, punchThrust: 0.5, reserve: 0.2 },
  race: { hover: 0.05, cruise: 0.55, punch: 0.4, cruiseThrust: 2.5, punchThrust: 0.7, reserve: 0.15 },
  'long-range': { hover: 0.1, cruise: 0.85, punch: 0.05, cruiseThrust: 1.15, punchThrust: 0.5, reserve: 0.2 },
  smooth: { hover: 0.3, cruise: 0.6, punch: 0.1, cruiseThrust: 1.25, punchThrust: 0.5, reserve: 0.2 },
  indoor: { hover: 0.3, cruise: 0.5, punch: 0.2, cruiseThrust: 1.3, punchThrust: 0.7, reserve: 0.15 },
  lifting: { hover: 0.5, cruise: 0.45, punch: 0.05, cruiseThrust: 1.15, punchThrust: 0.5, reserve: 0.2 },
};
