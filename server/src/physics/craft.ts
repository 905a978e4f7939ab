/**
 * A craft as its builder describes it, turned into the numbers the solvers need, with what is doubtful about them.
 * It must not solve anything.
 */
import { type Air, airAt } from './air';
import { HALF_WIDTH } from './bands';
import { estimatedResistance, landingVoltage, type PackInput } from './battery';
import { clamp, G, KT_OF_UNIT_KV } from './constants';
import { type Belief, FACTORS, type Factor, type FactorVector, independent, indexOf } from './factors';
import { type Known, sigmaOf, usable } from './known';
import type { Range } from './mass';
import {
  estimatedLossTorque,
  estimatedPathResistance,
  lossTorqueOfNoLoad,
  type Motor,
  type MotorSize,
  pathResistanceOfWinding,
  STATOR_VOLUME_FITTED,
  statorVolume,
} from './motor';
import type { Rotor } from './operating-point';
import { type PropellerSize, powerCoefficient, propellerOf, thrustCoefficient } from './propeller';

export interface MotorsInput extends MotorSize {
  readonly count: number;
  /** Pairs on one arm, one above the other. */
  readonly coaxial?: boolean;
  /** Ω between two wires of the cold motor, as data sheets give it. */
  readonly resistance?: Known;
  /** A */
  readonly noLoadCurrent?: Known;
  /** V at which the no-load current was read; 10 when absent. */
  readonly noLoadVoltage?: number;
}

export interface PropellerInput extends PropellerSize {
  /** Static thrust coefficient, T/(ρ n² D⁴), near hover. */
  readonly ct?: Known;
  /** Static power coefficient, P/(ρ n³ D⁵). */
  readonly cp?: Known;
}

export interface CraftPackInput extends PackInput {
  /** Ω of the whole pack with its lead. */
  readonly resistance?: Known;
  /** Relative spread of the capacity; 0.04 when absent, 0.01 when the pack was measured. */
  readonly capacitySigma?: number;
}

/** How the craft is flown. Shares are of time and are scaled to add up to one. */
export interface FlightMix {
  readonly hover: number;
  readonly cruise: number;
  readonly punch: number;
  /** Thrust over weight when cruising. */
  readonly cruiseThrust: number;
  /** Share of full thrust, at half of the flight, in a punch. */
  readonly punchThrust: number;
  /** Share of the capacity left at landing, 0 … 0.9. */
  readonly reserve: number;
}

/** One row of a thrust stand: one motor and this propeller. What a stand didn't read is absent. */
export interface ThrustRow {
  /** 0 … 1 */
  readonly throttle?: number;
  /** N */
  readonly thrust: number;
  /** V at the controller while it ran. */
  readonly voltage: number;
  /** A */
  readonly current?: number;
  readonly rpm?: number;
}

/** A flight of this craft from a full pack. */
export interface LoggedFlight {
  /** Only hovering, or as the builder flies it. */
  readonly flown: 'hovering' | 'as-flown';
  /** s */
  readonly duration?: number;
  /** Ah taken out over the duration. */
  readonly used?: number;
  /** A, mean; used when duration and used are not both there. */
  readonly meanCurrent?: number;
  /** 0 … 1 */
  readonly hoverThrottle?: number;
  /** kg then; the craft's own when absent. Give it when the craft's mass is being varied. */
  readonly mass?: number;
}

export interface CraftInput {
  readonly motors: MotorsInput;
  readonly propeller: PropellerInput;
  readonly pack: CraftPackInput;
  /** kg all-up, with its typical range. */
  readonly mass: Range;
  /** Altitude m; temperature K, standard for the altitude when absent. */
  readonly air?: { readonly altitude?: number; readonly temperature?: number };
  /** W of everything but the motors. */
  readonly auxiliaryPower?: number;
  readonly mix: FlightMix;
  readonly thrustTable?: readonly ThrustRow[];
  readonly log?: LoggedFlight;
}

/** The numbers of a craft for one setting of the factors. */
export interface Craft {
  readonly rotor: Rotor;
  readonly count: number;
  /** Share of a free propeller's thrust that lifts the craft. */
  readonly installedThrust: number;
  /** N */
  readonly weight: number;
  readonly pack: {
    readonly input: PackInput;
    readonly resistance: number;
    readonly capacity: number;
    readonly landing: number;
  };
  readonly auxiliary: number;
  readonly mix: FlightMix;
  readonly throttleOffset: number;
  readonly flying: number;
}

/** Real speed constants are a little under the printed ones. Fitted. */
const TRUE_KV = 0.96;
/** Thrust of a coaxial pair over that of two free propellers at the same speeds (from memory, 0.80 … 0.90 common). */
const COAXIAL_THRUST = 0.86;
/**
 * Arms in the wake take some thrust back: an arm over 6 % of the disc, drag coefficient 1.2, in a wake of 1.5 times the
 * induced speed. An estimate; stands have no arms.
 */
const ARM_THRUST = 0.96;
/** Where a measured CT or CP is taken to hold: near the hover of a small craft, at sea level. */
const COEFFICIENT_SPEED = 200; // rev/s
const COEFFICIENT_AIR = airAt(0);

/** What a propeller, motor and air give for one setting of the factors. */
export function rotorOf(motors: MotorsInput, size: PropellerInput, air: Air, factor: (f: Factor) => number): Rotor {
  let propeller = propellerOf(size);
  if (usable(size.ct)) {
    const ratio = clamp(size.ct.value, 0.01, 0.5) / thrustCoefficient(propeller, COEFFICIENT_AIR, COEFFICIENT_SPEED);
    propeller = { ...propeller, thrustCoefficient: propeller.thrustCoefficient * ratio };
  }
  if (usable(size.cp)) {
    const ratio = clamp(size.cp.value, 0.003, 0.5) / powerCoefficient(propeller, COEFFICIENT_AIR, COEFFICIENT_SPEED);
    propeller = { ...propeller, powerFactor: propeller.powerFactor * ratio };
  }
  propeller = {
    ...propeller,
    thrustCoefficient: propeller.thrustCoefficient * factor('thrust'),
    powerFactor: propeller.powerFactor * factor('power'),
  };
  const kv = motors.kv * TRUE_KV * factor('kv');
  const motor: Motor = {
    torqueConstant: KT_OF_UNIT_KV / kv,
    backEmf: 60 / kv,
    resistance:
      (usable(motors.resistance) ? pathResistanceOfWinding(motors.resistance.value) : estimatedPathResistance(motors)) *
      factor('resistance'),
    lossTorque:
      (usable(motors.noLoadCurrent)
        ? lossTorqueOfNoLoad(motors, motors.noLoadCurrent.value, motors.noLoadVoltage)
        : estimatedLossTorque(motors)) * factor('loss'),
  };
  return { propeller, motor, air, partLoad: factor('partLoad') };
}

/** The craft for one setting of the factors. The input must have passed `faultOf`. */
export function craftOf(input: CraftInput, factors: FactorVector, massThen?: number): Craft {
  const factor = (f: Factor): number => Math.exp(factors[indexOf(f)] as number);
  const { motors, pack } = input;
  return {
    rotor: rotorOf(motors, input.propeller, airAt(input.air?.altitude, input.air?.temperature), factor),
    count: motors.count,
    installedThrust: ARM_THRUST * (motors.coaxial ? COAXIAL_THRUST : 1),
    weight: (massThen ?? input.mass.value) * G * factor('mass'),
    pack: {
      input: pack,
      resistance:
        (usable(pack.resistance) ? pack.resistance.value : estimatedResistance(pack)) * factor('packResistance'),
      capacity: pack.capacity * factor('capacity'),
      landing: landingVoltage(pack) * pack.cells,
    },
    auxiliary: clamp(input.auxiliaryPower ?? 0, 0, 1e4),
    mix: sound(input.mix),
    throttleOffset: factors[indexOf('throttle')] as number,
    flying: factor('flying'),
  };
}

/** Shares that add up to one and levels inside their meaning. */
function sound(mix: FlightMix): FlightMix {
  const share = (x: number): number => (x > 0 && Number.isFinite(x) ? x : 0);
  const sum = share(mix.hover) + share(mix.cruise) + share(mix.punch);
  const hover = sum > 0 ? share(mix.hover) / sum : 1;
  const cruise = sum > 0 ? share(mix.cruise) / sum : 0;
  const level = (x: number, low: number, high: number, otherwise: number): number =>
    Number.isFinite(x) ? clamp(x, low, high) : otherwise;
  return {
    hover,
    cruise,
    punch: Math.max(0, 1 - hover - cruise),
    cruiseThrust: level(mix.cruiseThrust, 1, 10, 1.2),
    punchThrust: level(mix.punchThrust, 0, 1, 0.7),
    reserve: level(mix.reserve, 0, 0.9, 0.2),
  };
}

const INCH = 0.0254;

/**
 * What is doubtful about a propeller, a motor and its controller, before any calibration (standard deviations of
 * logarithms). Sizes from the scatter around the fits; those for small and ducted propellers and odd motors are judged.
 */
export function rotorSigmas(motors: MotorsInput, size: PropellerInput): Record<Factor, number> {
  const inches = size.diameter / INCH;
  // Below four inches the data are few, below 2.2 inches there are none.
  const [ct, power] = inches < 2.2 ? [0.29, 0.2] : inches < 4 ? [0.24, 0.16] : [0.11, 0.1];
  const aeroplane = size.blade !== undefined && size.blade !== 'multirotor' ? 1.25 : 1;
  const duct = size.ducted ? 1.35 : 1;
  const thrust = usable(size.ct) ? Math.hypot(0.02, sigmaOf(size.ct)) : ct * aeroplane * duct;
  // CP is measured apart from CT: at a given thrust its share of the doubt in CT stays, as the power 1.5.
  const atThrust = usable(size.cp) ? Math.hypot(0.03, sigmaOf(size.cp), 1.5 * thrust) : power * aeroplane * duct;
  const volume = statorVolume(motors);
  const [smallest, largest] = STATOR_VOLUME_FITTED;
  const odd = volume < smallest || volume > largest ? 1.35 : 1;
  return {
    thrust,
    power: atThrust,
    resistance: usable(motors.resistance) ? Math.hypot(0.25, sigmaOf(motors.resistance)) : 0.33 * odd,
    loss: usable(motors.noLoadCurrent) ? Math.hypot(0.2, sigmaOf(motors.noLoadCurrent)) : 0.4 * odd,
    kv: 0.03,
    partLoad: 0.35 * odd,
    throttle: 0.03,
    packResistance: 0,
    capacity: 0,
    mass: 0,
    flying: 0,
  };
}

/** What is doubtful about a whole craft before any calibration. */
export function priorOf(input: CraftInput): Belief {
  const { mass, pack, motors } = input;
  const s = rotorSigmas(motors, input.propeller);
  s.thrust = Math.hypot(s.thrust, motors.coaxial ? 0.06 : 0.02);
  s.packResistance = usable(pack.resistance) ? Math.hypot(0.05, sigmaOf(pack.resistance)) : 0.4;
  s.capacity = clamp(pack.capacitySigma ?? 0.04, 0.001, 0.5);
  s.mass = clamp((mass.high - mass.low) / (2 * HALF_WIDTH * mass.value), 0.001, 0.5);
  s.flying = 0.2;
  return independent(FACTORS.map((f) => s[f]));
}

/** The first field that no real craft has, or undefined. */
export function faultOf(input: CraftInput): string | undefined {
  const { motors, propeller, pack, mass } = input;
  return (
    rotorFaultOf(motors, propeller) ??
    firstFault({
      'motors.count': [motors.count, 1, 64],
      'pack.cells': [pack.cells, 1, 24],
      'pack.capacity': [pack.capacity, 0.01, 1000],
      'mass.value': [mass.value, 0.001, 1000],
    })
  );
}

/** The same for a motor and its propeller alone. */
export function rotorFaultOf(motors: MotorsInput, propeller: PropellerInput): string | undefined {
  return firstFault({
    'motors.statorDiameterMm': [motors.statorDiameterMm, 1, 200],
    'motors.statorHeightMm': [motors.statorHeightMm, 0.3, 100],
    'motors.kv': [motors.kv, 20, 100_000],
    'propeller.diameter': [propeller.diameter, 0.01, 2],
    'propeller.pitch': [propeller.pitch, 0.001, 4],
    'propeller.blades': [propeller.blades, 1, 12],
  });
}

const firstFault = (fields: Readonly<Record<string, readonly [number, number, number]>>): string | undefined =>
  Object.keys(fields).find((name) => {
    const [value, low, high] = fields[name] as readonly [number, number, number];
    return !(value >= low && value <= high);
  });
