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
  /** CT at `REFERENCE_TIP`. */
  readonly thrustCoefficient: number;
  /** K = CP/CT^1.5 at `REFERENCE_TIP`. */
  readonly loading: number;
  /** Multiplies K after its floor: a duct's estimate, a measurement's correction. */
  readonly powerFactor: number;
}

/**
 * Both quantities drift with n·D (tip speed over π) in m/s of sea-level air, that is, with the Reynolds number of a blade of
 * a given width: thin blades work better when it is higher. This orders the data better than the Reynolds number of the
 * diameter, since small propellers have relatively wider blades.
 */
const REFERENCE_TIP = 20;
const TIP_LOW = 4;
const TIP_HIGH = 50;
/** CT goes as this power of it, and K as minus three times the power (0.18). */
const CT_EXPONENT = 0.06;

/** √(2/π): K of a propeller without any loss. */
const IDEAL_LOADING = Math.sqrt(2 / Math.PI);
/** Next to no small propeller in the data is above this figure of merit, at any speed. */
const BEST_FIGURE_OF_MERIT = 0.72;

/** Limits of the data the law was fitted on. */
export const PITCH_RATIO_FITTED: readonly [number, number] = [0.3, 1.3];

/**
 * ln CT = level + pitch·x + curve·x² + blades·ln(blades/2), x = ln(pitch/diameter/0.7). Aeroplane outlines are fitted on the
 * static tests of 157 propellers of 2–10 inch (UIUC Propeller Data Site, volumes 1–3; Brandt, Deters, Ananda, Dantsker,
 * Selig); `multirotor` on nine thrust-stand series of 5–10 inch (Cao & Strawson 2018; alspitz/esc_test 2019;
 * ctu-mrs/ctu-mrs.github.io), with the curve of the aeroplane ones.
 */
const CT = { level: -2.122, pitch: 0.534, curve: -0.223, blades: 0.589 };
const CT_MULTIROTOR = { level: -2.114, pitch: 0.431, curve: -0.223, blades: 0.359 };
/** ln K in the same form and from the same data, with one level for multirotor propellers. */
const LOADING = { level: 0.352, pitch: 0.576, curve: 0.919, blades: -0.137 };
const OUTLINE: Readonly<Record<Blade, { readonly ct: number; readonly loading: number }>> = {
  multirotor: { ct: 0, loading: -0.076 },
  wide: { ct: 0.223, loading: -0.121 },
  usual: { ct: 0, loading: 0 },
  narrow: { ct: -0.181, loading: 0.165 },
};
/**
 * The short ducts of small craft: what their lip gains, and what tip gap, spokes, guards and the plate in the wake take away.
 * No ducted thrust stand was found. With a free propeller's law nine ordinary craft of 65 mm to 3 inch came out with
 * 3.7–5.6 times their weight in thrust where common practice is 2.5–4, and hovered at too little throttle; these two
 * values bring their hover throttle into the middle of common practice (40–55 %). They are a judgement, hence the wide band. The one
 * independent two-inch stand (open, d'Antonio 2020) drew a third more power than the model, which points the same way.
 */
const DUCT_THRUST = 0.85;
const DUCT_POWER = 1.2;

/**
 * Below 2.2 inch there is no propeller in the data, and what little is known says that the law is too kind: craft of 65 and
 * 75 mm are flown empty in about two thirds of the time it gives (common practice: 3.5–4.5 min on 300–450 mAh), the two-inch
 * stand drew a third more, and blades that small are thick and rough for their speed. A judgement, hence the wide band.
 */
const SMALLEST_MEASURED = 0.055; // m
const SMALL_POWER_EXPONENT = 0.8;
const smallPower = (diameter: number): number => Math.max(1, SMALLEST_MEASURED / diameter) ** SMALL_POWER_EXPONENT;

/**
 * Near the speed of sound at the tips a blade takes more power for its thrust. No stand in the data reaches a tip Mach number
 * of 0.45; five-inch craft on six cells reach 0.65, where sellers' stands print 1.7–2.0 g/W at full throttle (common practice)
 * and the law without this gives 2.3–2.5. A judgement.
 */
const QUIET_TIP = 0.4;
const TIP_LOSS = 6.5;
const tipLoss = (mach: number): number => 1 + TIP_LOSS * Math.max(0, mach - QUIET_TIP) ** 2;

/** The law of a propeller from its printed size. */
export function propellerOf(size: PropellerSize): Propeller {
  const blade = size.blade ?? 'multirotor';
  const x = Math.log(clamp(size.pitch / size.diameter, 0.25, 1.5) / 0.7);
  const b = Math.log(clamp(size.blades, 1, 8) / 2);
  const shape = (c: typeof CT): number => c.level + c.pitch * x + c.curve * x * x + c.blades * b;
  const ct = Math.exp(shape(blade === 'multirotor' ? CT_MULTIROTOR : CT) + OUTLINE[blade].ct);
  return {
    diameter: size.diameter,
    pitch: size.pitch,
    thrustCoefficient: ct * (size.ducted ? DUCT_THRUST : 1),
    loading: Math.exp(shape(LOADING) + OUTLINE[blade].loading),
    powerFactor: (size.ducted ? DUCT_POWER : 1) * smallPower(size.diameter),
  };
}

/** Density over viscosity against standard air at sea level. */
const thickness = (air: Air): number => air.density / air.viscosity / SEA_LEVEL_THICKNESS;
const SEA_LEVEL_THICKNESS = 1.225 / 1.7894e-5; // s/m²

/** n·D in sea-level air over its reference, held to the range of the data. */
const tipRatio = (p: Propeller, air: Air, speed: number): number =>
  clamp(speed * p.diameter * thickness(air), TIP_LOW, TIP_HIGH) / REFERENCE_TIP;

/** CT at a speed in rev/s. */
export const thrustCoefficient = (p: Propeller, air: Air, speed: number): number =>
  p.thrustCoefficient * tipRatio(p, air, speed) ** CT_EXPONENT;

/** CP at a speed in rev/s. */
export function powerCoefficient(p: Propeller, air: Air, speed: number): number {
  const drift = tipRatio(p, air, speed) ** CT_EXPONENT;
  const ct = p.thrustCoefficient * drift;
  const loading = Math.max(p.loading / (drift * drift * drift), IDEAL_LOADING / BEST_FIGURE_OF_MERIT);
  return ct * Math.sqrt(ct) * loading * p.powerFactor * tipLoss(tipMach(p, air, speed));
}

/** Thrust in N at a speed in rev/s. */
export const thrustAt = (p: Propeller, air: Air, speed: number): number =>
  thrustCoefficient(p, air, speed) * air.density * speed * speed * p.diameter ** 4;

/** Shaft torque in N m at a speed in rev/s. */
export const torqueAt = (p: Propeller, air: Air, speed: number): number =>
  (powerCoefficient(p, air, speed) * air.density * speed * speed * p.diameter ** 5) / (2 * Math.PI);

/** Speed in rev/s that gives a thrust in N: exact, since CT is a power of speed between two constant ends. */
export function speedForThrust(p: Propeller, air: Air, thrust: number): number {
  if (!(thrust > 0)) return 0;
  const base = thrust / (p.thrustCoefficient * air.density * p.diameter ** 4);
  const perSpeed = p.diameter * thickness(air);
  const free = (base / (perSpeed / REFERENCE_TIP) ** CT_EXPONENT) ** (1 / (2 + CT_EXPONENT));
  const tip = free * perSpeed;
  if (tip >= TIP_LOW && tip <= TIP_HIGH) return free;
  return Math.sqrt(base / ((tip < TIP_LOW ? TIP_LOW : TIP_HIGH) / REFERENCE_TIP) ** CT_EXPONENT);
}

/** Tip speed over the speed of sound. @param speed rev/s */
export const tipMach = (p: Propeller, air: Air, speed: number): number =>
  (Math.PI * p.diameter * speed) / air.speedOfSound;

/** Speed in m/s at which the blade would advance without slip. @param speed rev/s */
export const pitchSpeed = (p: Propeller, speed: number): number => p.pitch * speed;
