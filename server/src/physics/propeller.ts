/**
 * A propeller standing still in air: thrust and power at a speed, from its printed size. It must not know what turns it,
 * and knows nothing of forward flight.
 *
 * Form: thrust T = CT·ρ·n²·D⁴ and power P = CP·ρ·n³·D⁵, n in rev/s. The fitted quantities are CT and the loading ratio
 * K = CP/CT^1.5, which is √(2/π) divided by the figure of merit of momentum theory.
 */
import type { Air } from './air';
import { clamp } from './constants';

/**
 * Outline of the blade as its seller calls it. `multirotor` covers everything sold for small multirotors; the other
 * three are aeroplane propellers: `wide` slow-flyers, `usual`, and `narrow` sport or wooden ones.
 */
export type Blade = 'multirotor' | 'wide' | 'usual' | 'narrow';

export interface PropellerSize {
  /** m */
  readonly diameter: number;
  /** m of advance a turn */
  readonly pitch: number;
  readonly blades: number;
  /** In a duct; the gain of the duct is an estimate. */
  readonly ducted?: boolean;
  readonly blade?: Blade;
}

export interface Propeller {
  readonly diameter: number;
  readonly pitch: number;
  /** CT at Reynolds number `RE_REFERENCE`. */
  readonly thrustCoefficient: number;
  /** K = CP/CT^1.5 at `RE_REFERENCE`. */
  readonly loading: number;
  /** Exponent of K on the Reynolds number. */
  readonly loadingExponent: number;
}

export const RE_REFERENCE = 1e5;
const RE_LOW = 2e4;
const RE_HIGH = 6e5;
/** CT grows slowly with speed: thin blades work better at a higher Reynolds number. Fitted. */
const CT_EXPONENT = 0.06;
/** √(2/π): K of a propeller without any loss. */
const IDEAL_LOADING = Math.sqrt(2 / Math.PI);
/** No small propeller in the data is above this figure of merit. */
const BEST_FIGURE_OF_MERIT = 0.8;

/** Limits of the data the law was fitted on. */
export const PITCH_RATIO_FITTED: readonly [number, number] = [0.3, 1.3];

/** ln CT = a + b·x + c·x² + d·ln(blades/2), x = ln(pitch/diameter/0.7). Fitted. */
const CT_USUAL = { level: -2.145, pitch: 0.515, curve: -0.242, blades: 0.6, wide: 0.229, narrow: -0.171 };
const CT_MULTIROTOR = { level: -2.13, pitch: 0.45, curve: -0.242, blades: 0.55 };
/** ln K = a + b·x + c·x² + d·ln(blades/2) + (e + f·x)·ln(Re/1e5). Fitted. */
const LOADING = {
  level: 0.489,
  pitch: 0.502,
  curve: 0.849,
  blades: -0.153,
  reynolds: -0.114,
  reynoldsPitch: 0.13,
  wide: -0.102,
  narrow: 0.178,
  multirotor: -0.1,
};
/** A duct adds thrust at the same speed and takes load off the blades (from memory; wide band). */
const DUCT_THRUST = 1.1;
const DUCT_LOADING = 0.92;

/**
 * The law of a propeller.
 * @param thrustFactor multiplies CT, @param powerFactor multiplies CP at a given CT
 */
export function propellerOf(size: PropellerSize, thrustFactor = 1, powerFactor = 1): Propeller {
  const blade = size.blade ?? 'multirotor';
  const ratio = clamp(size.pitch / size.diameter, 0.25, 1.5);
  const x = Math.log(ratio / 0.7);
  const b = Math.log(clamp(size.blades, 1, 8) / 2);
  const c = blade === 'multirotor' ? CT_MULTIROTOR : CT_USUAL;
  const outlineCT = blade === 'wide' ? CT_USUAL.wide : blade === 'narrow' ? CT_USUAL.narrow : 0;
  const outlineK = blade === 'usual' ? 0 : LOADING[blade];
  const ct = Math.exp(c.level + c.pitch * x + c.curve * x * x + c.blades * b + outlineCT);
  const k = Math.exp(LOADING.level + LOADING.pitch * x + LOADING.curve * x * x + LOADING.blades * b + outlineK);
  return {
    diameter: size.diameter,
    pitch: size.pitch,
    thrustCoefficient: ct * (size.ducted ? DUCT_THRUST : 1) * thrustFactor,
    loading: Math.max(k, IDEAL_LOADING / BEST_FIGURE_OF_MERIT) * (size.ducted ? DUCT_LOADING : 1) * powerFactor,
    loadingExponent: LOADING.reynolds + LOADING.reynoldsPitch * x,
  };
}

/** Reynolds number ρnD²/μ over its reference, held to the range of the data. */
const reynoldsRatio = (p: Propeller, air: Air, speed: number): number =>
  clamp((air.density * speed * p.diameter * p.diameter) / air.viscosity, RE_LOW, RE_HIGH) / RE_REFERENCE;

/** CT at a speed in rev/s. */
export const thrustCoefficient = (p: Propeller, air: Air, speed: number): number =>
  p.thrustCoefficient * reynoldsRatio(p, air, speed) ** CT_EXPONENT;

/** CP at a speed in rev/s. */
export const powerCoefficient = (p: Propeller, air: Air, speed: number): number => {
  const re = reynoldsRatio(p, air, speed);
  return p.thrustCoefficient ** 1.5 * p.loading * re ** (1.5 * CT_EXPONENT + p.loadingExponent);
};

/** Thrust in N at a speed in rev/s. */
export const thrustAt = (p: Propeller, air: Air, speed: number): number =>
  thrustCoefficient(p, air, speed) * air.density * speed * speed * p.diameter ** 4;

/** Shaft torque in N m at a speed in rev/s. */
export const torqueAt = (p: Propeller, air: Air, speed: number): number =>
  (powerCoefficient(p, air, speed) * air.density * speed * speed * p.diameter ** 5) / (2 * Math.PI);

/** Speed in rev/s that gives a thrust in N: exact, since CT is a power of speed between two constant ends. */
export function speedForThrust(p: Propeller, air: Air, thrust: number): number {
  if (!(thrust > 0)) return 0;
  const rePerSpeed = (air.density * p.diameter * p.diameter) / air.viscosity / RE_REFERENCE;
  const base = thrust / (p.thrustCoefficient * air.density * p.diameter ** 4);
  const free = (base / rePerSpeed ** CT_EXPONENT) ** (1 / (2 + CT_EXPONENT));
  const re = free * rePerSpeed;
  const low = RE_LOW / RE_REFERENCE;
  const high = RE_HIGH / RE_REFERENCE;
  if (re < low) return Math.sqrt(base / low ** CT_EXPONENT);
  if (re > high) return Math.sqrt(base / high ** CT_EXPONENT);
  return free;
}

/** Tip speed over the speed of sound. @param speed rev/s */
export const tipMach = (p: Propeller, air: Air, speed: number): number =>
  (Math.PI * p.diameter * speed) / air.speedOfSound;

/** Speed in m/s at which the blade would advance without slip. @param speed rev/s */
export const pitchSpeed = (p: Propeller, speed: number): number => p.pitch * speed;
