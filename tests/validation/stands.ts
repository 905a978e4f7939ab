/**
 * Error of the model as shipped on thrust-stand series: from the nameplate alone, with one row given, and whether the
 * typical range holds what was measured when the motor had no part in setting the level.
 */
import { airAt } from '../../server/src/physics/air';
import { HALF_WIDTH } from '../../server/src/physics/bands';
import { calibrateRotor } from '../../server/src/physics/calibrate';
import { type MotorsInput, type PropellerInput, rotorOf, rotorSigmas } from '../../server/src/physics/craft';
import { dutyOfThrottle } from '../../server/src/physics/esc';
import {
  type Belief,
  FACTOR_COUNT,
  FACTORS,
  type FactorVector,
  independent,
  indexOf,
  NO_CHANGE,
  sigmaAt,
  spreadOf,
} from '../../server/src/physics/factors';
import { atDuty, atThrust, stand } from '../../server/src/physics/operating-point';
import { speedForThrust } from '../../server/src/physics/propeller';
import type { StandCase, StandRow } from './cases';
import { median, quantile, relative } from './statistics';

const motorOf = (c: StandCase): MotorsInput => ({
  count: 1,
  statorDiameterMm: c.statorDiameterMm,
  statorHeightMm: c.statorHeightMm,
  kv: c.kv,
});

const propellerOf = (c: StandCase): PropellerInput => ({ diameter: c.diameter, pitch: c.pitch, blades: c.blades });

const rotorFor = (c: StandCase, f: FactorVector) =>
  rotorOf(motorOf(c), propellerOf(c), airAt(), (name) => Math.exp(f[indexOf(name)]!));

/** Predictions a stand can contradict; undefined where the model has no point or the row lacks the reading. */
const QUANTITIES = {
  'thrust at throttle': (c: StandCase, r: StandRow, f: FactorVector) => {
    if (r.throttle === undefined) return undefined;
    const p = atDuty(rotorFor(c, f), stand(r.voltage), dutyOfThrottle(r.throttle, f[indexOf('throttle')]!));
    return p.ok ? { predicted: p.value.thrust, measured: r.thrust } : undefined;
  },
  'current at throttle': (c: StandCase, r: StandRow, f: FactorVector) => {
    if (r.throttle === undefined) return undefined;
    const p = atDuty(rotorFor(c, f), stand(r.voltage), dutyOfThrottle(r.throttle, f[indexOf('throttle')]!));
    return p.ok ? { predicted: p.value.supplyCurrent, measured: r.current } : undefined;
  },
  'current at thrust': (c: StandCase, r: StandRow, f: FactorVector) => {
    const p = atThrust(rotorFor(c, f), stand(r.voltage), r.thrust);
    return p.ok ? { predicted: p.value.supplyCurrent, measured: r.current } : undefined;
  },
  'speed at thrust': (c: StandCase, r: StandRow, f: FactorVector) => {
    if (r.rpm === undefined) return undefined;
    const rotor = rotorFor(c, f);
    return { predicted: 60 * speedForThrust(rotor.propeller, rotor.air, r.thrust), measured: r.rpm };
  },
} as const;

export type Quantity = keyof typeof QUANTITIES;

/** Logarithm of predicted over measured. */
export function logError(q: Quantity, c: StandCase, r: StandRow, f: FactorVector = NO_CHANGE): number | undefined {
  const pair = QUANTITIES[q](c, r, f);
  return pair ? Math.log(pair.predicted / pair.measured) : undefined;
}

const topRow = (c: StandCase): StandRow => c.rows.reduce((a, b) => (b.thrust > a.thrust ? b : a));
const isPartLoad = (c: StandCase, r: StandRow): boolean => {
  const share = r.thrust / topRow(c).thrust;
  return share >= 0.1 && share <= 0.6;
};

export interface Spread {
  readonly median: number;
  readonly p90: number;
  readonly count: number;
}

const spread = (logs: readonly (number | undefined)[]): Spread => {
  const e = logs.filter((v) => v !== undefined).map(relative);
  return { median: median(e), p90: quantile(e, 0.9), count: e.length };
};

export interface StandErrors {
  readonly fullThrust: Spread;
  readonly fullCurrent: Spread;
  readonly fullCurrentAtThrust: Spread;
  readonly partCurrent: Spread;
  /** All rows but the one given, at their own thrust. */
  readonly othersWithTopRow: Spread;
  readonly othersWithMiddleRow: Spread;
}

export function standErrors(
  cases: readonly StandCase[],
  factorsOf: (c: StandCase) => FactorVector = () => NO_CHANGE,
): StandErrors {
  const top = (q: Quantity) => spread(cases.map((c) => logError(q, c, topRow(c), factorsOf(c))));
  return {
    fullThrust: top('thrust at throttle'),
    fullCurrent: top('current at throttle'),
    fullCurrentAtThrust: top('current at thrust'),
    partCurrent: spread(
      cases.flatMap((c) =>
        c.rows.filter((r) => isPartLoad(c, r)).map((r) => logError('current at thrust', c, r, factorsOf(c))),
      ),
    ),
    othersWithTopRow: spread(cases.flatMap((c) => others(c, topRow(c)))),
    othersWithMiddleRow: spread(cases.flatMap((c) => others(c, c.rows[Math.floor(c.rows.length / 2)]!))),
  };
}

function others(c: StandCase, given: StandRow): (number | undefined)[] {
  const { mean } = calibrateRotor(priorFor(c), motorOf(c), propellerOf(c), [given]).belief;
  return c.rows.filter((r) => r !== given).map((r) => logError('current at thrust', c, r, mean));
}

function priorFor(c: StandCase): Belief {
  const s = rotorSigmas(motorOf(c), propellerOf(c));
  return independent(FACTORS.map((f) => s[f]));
}

/** Level of every factor as the other motors of the set have it: the median of their own calibrations. */
export function levelWithout(cases: readonly StandCase[], left: StandCase): FactorVector {
  const same = (c: StandCase): boolean =>
    c.kv === left.kv && c.statorDiameterMm === left.statorDiameterMm && c.statorHeightMm === left.statorHeightMm;
  const means = cases
    .filter((c) => !same(c))
    .map((c) => calibrateRotor(priorFor(c), motorOf(c), propellerOf(c), c.rows).belief.mean);
  return Array.from({ length: FACTOR_COUNT }, (_, i) => (means.length > 0 ? median(means.map((m) => m[i]!)) : 0));
}

export interface Coverage {
  readonly quantity: string;
  readonly inside: number;
  readonly count: number;
}

/** Rows inside the typical range of a motor that had no part in the level. */
export function coverage(cases: readonly StandCase[]): Coverage[] {
  const count = (label: string, q: Quantity, rowsOf: (c: StandCase) => readonly StandRow[]): Coverage => {
    let inside = 0;
    let total = 0;
    for (const c of cases) {
      const level = levelWithout(cases, c);
      const belief: Belief = { ...priorFor(c), mean: level };
      for (const r of rowsOf(c)) {
        const error = logError(q, c, r, level);
        if (error === undefined) continue;
        const gradient = Array.from({ length: FACTOR_COUNT }, (_, i) => {
          const step = sigmaAt(belief, i);
          if (step < 1e-6) return 0;
          const moved = level.map((v, k) => (k === i ? v + step : v));
          const there = logError(q, c, r, moved);
          return there === undefined ? 0 : (there - error) / step;
        });
        total++;
        if (Math.abs(error) <= HALF_WIDTH * spreadOf(belief, gradient)) inside++;
      }
    }
    return { quantity: label, inside, count: total };
  };
  return [
    count('thrust at full throttle', 'thrust at throttle', (c) => [topRow(c)]),
    count('current at full throttle', 'current at throttle', (c) => [topRow(c)]),
    count('current at part load', 'current at thrust', (c) => c.rows.filter((r) => isPartLoad(c, r))),
    count('speed at thrust', 'speed at thrust', (c) => c.rows),
  ];
}
