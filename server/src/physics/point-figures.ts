/**
 * One operating point of a motor and propeller as on a thrust stand, with typical ranges. It must not know a craft or a
 * pack: the supply holds its voltage.
 */
import { airAt } from './air';
import { type Basis, type Figure, figureOf, type Unit } from './bands';
import { calibrateRotor } from './calibrate';
import { clamp, G } from './constants';
import { type MotorsInput, type PropellerInput, rotorFaultOf, rotorOf, rotorSigmas, type ThrustRow } from './craft';
import { dutyOfThrottle, throttleOfDuty } from './esc';
import { FACTOR_COUNT, FACTORS, type FactorVector, independent, indexOf, sigmaAt, spreadOf } from './factors';
import { type Notice, sizeNotices } from './notices';
import { atDuty, atThrust, type OperatingPoint, stand } from './operating-point';
import { badInput, type Outcome, possible } from './result';

export interface PointInput {
  readonly motor: Omit<MotorsInput, 'count' | 'coaxial'>;
  readonly propeller: PropellerInput;
  /** V that the supply holds. */
  readonly voltage: number;
  /** Throttle 0 … 1, or thrust in N. */
  readonly at: { readonly throttle: number } | { readonly thrust: number };
  readonly air?: { readonly altitude?: number; readonly temperature?: number };
  /** Rows of the same motor and propeller, taken at sea level. */
  readonly thrustTable?: readonly ThrustRow[];
}

export interface PointValuesOnStand {
  /** N */
  readonly thrust: number;
  readonly throttle: number;
  /** A from the supply. */
  readonly current: number;
  /** A in the motor. */
  readonly motorCurrent: number;
  /** W from the supply. */
  readonly power: number;
  readonly rpm: number;
  readonly tipMach: number;
  /** m/s */
  readonly pitchSpeed: number;
  readonly gramsPerWatt: number;
  /** W in the motor and its leads. */
  readonly motorHeat: number;
}

const UNITS: { readonly [K in keyof PointValuesOnStand]: Unit } = {
  thrust: 'N',
  throttle: '1',
  current: 'A',
  motorCurrent: 'A',
  power: 'W',
  rpm: 'rpm',
  tipMach: '1',
  pitchSpeed: 'm/s',
  gramsPerWatt: 'g/W',
  motorHeat: 'W',
};

export type StandFigures = { readonly [K in keyof PointValuesOnStand]: Figure };

export interface StandPoint {
  readonly figures: StandFigures;
  readonly notices: readonly Notice[];
  readonly basis: Basis;
}

function solve(input: PointInput, factors: FactorVector): Outcome<PointValuesOnStand> {
  const air = airAt(input.air?.altitude, input.air?.temperature);
  const rotor = rotorOf({ ...input.motor, count: 1 }, input.propeller, air, (f) =>
    Math.exp(factors[indexOf(f)] as number),
  );
  const supply = stand(input.voltage);
  const offset = factors[indexOf('throttle')] as number;
  const p =
    'thrust' in input.at
      ? atThrust(rotor, supply, input.at.thrust)
      : atDuty(rotor, supply, dutyOfThrottle(input.at.throttle, offset));
  return p.ok ? possible(onStand(p.value, offset)) : p;
}

const onStand = (p: OperatingPoint, offset: number): PointValuesOnStand => ({
  thrust: p.thrust,
  throttle: clamp(throttleOfDuty(p.duty, offset), 0, 1),
  current: p.supplyCurrent,
  motorCurrent: p.motorCurrent,
  power: p.escPower,
  rpm: p.speed * 60,
  tipMach: p.tipMach,
  pitchSpeed: p.pitchSpeed,
  gramsPerWatt: ((p.thrust / G) * 1000) / p.escPower,
  motorHeat: p.motorHeat,
});

function faultOfPoint(input: PointInput): string | undefined {
  const fault = rotorFaultOf({ ...input.motor, count: 1 }, input.propeller);
  if (fault !== undefined) return fault;
  if (!(input.voltage > 0.5 && input.voltage < 1000)) return 'voltage';
  const asked = 'thrust' in input.at ? input.at.thrust : input.at.throttle;
  return asked > 0 && Number.isFinite(asked) && ('thrust' in input.at || asked <= 1) ? undefined : 'at';
}

const beliefOf = (input: PointInput) => {
  const motor = { ...input.motor, count: 1 };
  const sigmas = rotorSigmas(motor, input.propeller);
  const prior = independent(FACTORS.map((f) => sigmas[f]));
  return calibrateRotor(prior, motor, input.propeller, input.thrustTable ?? []);
};

/** One point without ranges. */
export function pointValues(input: PointInput): Outcome<PointValuesOnStand> {
  const fault = faultOfPoint(input);
  return fault === undefined ? solve(input, beliefOf(input).belief.mean) : badInput(fault);
}

/** One point with typical ranges. Never throws; an impossible point is typed. */
export function operatingPoint(input: PointInput): Outcome<StandPoint> {
  const fault = faultOfPoint(input);
  if (fault !== undefined) return badInput(fault);
  const { belief, used } = beliefOf(input);
  const here = solve(input, belief.mean);
  if (!here.ok) return here;
  const moved = Array.from({ length: FACTOR_COUNT }, (_, i) => {
    const step = sigmaAt(belief, i);
    if (step < 1e-6) return undefined;
    for (const by of [step, -step]) {
      const mean = belief.mean.slice();
      mean[i] = (mean[i] as number) + by;
      const there = solve(input, mean);
      if (there.ok) return { by, values: there.value };
    }
    return undefined;
  });
  const basis: Basis = used > 0 ? 'calibrated' : 'modelled';
  const figures = {} as Record<keyof PointValuesOnStand, Figure>;
  for (const key of Object.keys(UNITS) as (keyof PointValuesOnStand)[]) {
    const value = here.value[key];
    const gradient = moved.map((m) =>
      m && value > 0 && m.values[key] > 0 ? Math.log(m.values[key] / value) / m.by : 0,
    );
    const most = key === 'throttle' ? 1 : undefined;
    figures[key] = figureOf(value, spreadOf(belief, gradient), UNITS[key], basis, most);
  }
  return possible({ figures, notices: sizeNotices(input.motor, input.propeller), basis });
}
