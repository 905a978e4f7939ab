/**
 * Measured beats modelled: thrust-stand rows and a logged flight correct the factors of a craft and narrow what is
 * doubtful about them. It must not change the model's form.
 *
 * Method: each reading is a scalar measurement of the logarithm of a quantity, taken in one after the other (extended
 * Kalman update), with the gradient by differences.
 */
import { type Air, airAt } from './air';
import { clamp } from './constants';
import {
  type Craft,
  type CraftInput,
  craftOf,
  type MotorsInput,
  type PropellerInput,
  rotorOf,
  type ThrustRow,
} from './craft';
import { flightOf, hoverOf } from './craft-values';
import { dutyOfThrottle } from './esc';
import {
  type Belief,
  FACTOR_COUNT,
  FACTORS,
  type Factor,
  type FactorVector,
  indexOf,
  learn,
  sigmaAt,
  spreadOf,
} from './factors';
import { atDuty, atThrust, stand } from './operating-point';
import { speedForThrust } from './propeller';

/** A reading that the nameplate says should not be. */
export interface Contradiction {
  /** Index in the thrust table, or undefined for the logged flight. */
  readonly row?: number;
  readonly quantity: 'current' | 'thrust' | 'rpm' | 'mean-current' | 'hover-throttle';
  readonly measured: number;
  /** From the nameplate alone. */
  readonly predicted: number;
  /** Distance in standard deviations of the prediction before calibration. */
  readonly sigmas: number;
  /** False for a reading so far out that it looks like a slip of the pen. */
  readonly used: boolean;
}

interface Reading {
  readonly row?: number;
  readonly quantity: Contradiction['quantity'];
  readonly measured: number;
  /** Undefined where the model has no answer. */
  readonly predict: (factors: FactorVector) => number | undefined;
  /** Relative standard deviation of the reading and of the model's form around it. */
  readonly sigma: number;
  /** Factors the reading can tell something about. */
  readonly factors: readonly Factor[];
  /** Logarithm of the ratio that must be passed as well before a reading is called a contradiction. */
  readonly slack: number;
}

const ROTOR_FACTORS: readonly Factor[] = ['thrust', 'power', 'resistance', 'loss', 'kv', 'partLoad', 'throttle'];

/** Spread of one stand against the next, and of the model's form along a table. */
const STAND_SIGMA = 0.06;
const LOG_SIGMA = 0.05;
/** A reading farther out than this is reported: twice the half-width of a typical range. */
const CONTRADICTION = 2.6;
/** A reading farther out than this is not used. */
const NOT_BELIEVED = 8;
/** No measurement moves a factor farther than this many standard deviations of what was believed before. */
const FARTHEST = 4;

/** Sellers' stands differ among themselves by more than half. */
const ROW_SLACK = Math.log(1.85);
/** The same craft is flown in two and a half times the time by another pilot. */
const STYLE_SLACK = Math.log(2.5);

const sane = (x: number | undefined): x is number => x !== undefined && Number.isFinite(x) && x > 0;

function rowReadings(
  table: readonly ThrustRow[],
  rotorFor: (factors: FactorVector) => ReturnType<typeof rotorOf>,
): Reading[] {
  const readings: Reading[] = [];
  table.forEach((row, index) => {
    if (!sane(row.thrust) || !sane(row.voltage)) return;
    const supply = stand(row.voltage);
    const add = (quantity: Reading['quantity'], measured: number, predict: Reading['predict'], sigma: number): void => {
      readings.push({ row: index, quantity, measured, predict, sigma, factors: ROTOR_FACTORS, slack: ROW_SLACK });
    };
    if (sane(row.rpm))
      add(
        'rpm',
        row.rpm,
        (f) => {
          const r = rotorFor(f);
          return 60 * speedForThrust(r.propeller, r.air, row.thrust);
        },
        STAND_SIGMA / 2,
      );
    if (sane(row.throttle) && row.throttle <= 1) {
      const throttle = row.throttle;
      add(
        'thrust',
        row.thrust,
        (f) => {
          const p = atDuty(rotorFor(f), supply, dutyOfThrottle(throttle, f[indexOf('throttle')]));
          return p.ok ? p.value.thrust : undefined;
        },
        STAND_SIGMA,
      );
    }
    if (sane(row.current))
      add(
        'current',
        row.current,
        (f) => {
          const p = atThrust(rotorFor(f), supply, row.thrust);
          return p.ok ? p.value.supplyCurrent : undefined;
        },
        STAND_SIGMA,
      );
  });
  // Rows of one stand share its errors: together they weigh as a few good readings, not as many independent ones.
  const weight = Math.sqrt(Math.max(1, readings.length / 3));
  return readings.map((r) => ({ ...r, sigma: r.sigma * weight }));
}

function logReadings(input: CraftInput): Reading[] {
  const { log } = input;
  if (!log) return [];
  const readings: Reading[] = [];
  const craft = (f: FactorVector): Craft => craftOf(input, f, log.mass);
  const mean = sane(log.duration) && sane(log.used) ? (log.used * 3600) / log.duration : log.meanCurrent;
  if (sane(mean))
    readings.push({
      quantity: 'mean-current',
      measured: mean,
      predict: (f) => {
        const flight = flightOf(craft(f), log.flown);
        return flight.ok ? flight.value.meanCurrent : undefined;
      },
      sigma: LOG_SIGMA,
      // A flight with turns and punches tells how it was flown, hardly what the motors would draw at full throttle.
      factors: log.flown === 'hovering' ? FACTORS : ['flying'],
      slack: log.flown === 'hovering' ? ROW_SLACK : STYLE_SLACK,
    });
  if (sane(log.hoverThrottle) && log.hoverThrottle <= 1)
    readings.push({
      quantity: 'hover-throttle',
      measured: log.hoverThrottle,
      predict: (f) => {
        const hover = hoverOf(craft(f));
        return hover.ok ? hover.value.throttle : undefined;
      },
      sigma: 2 * LOG_SIGMA,
      factors: FACTORS,
      slack: ROW_SLACK,
    });
  return readings;
}

/** Logarithm of the prediction and its gradient by the factors, or undefined where there is no answer. */
function linearised(
  reading: Reading,
  belief: Belief,
): { readonly at: number; readonly gradient: number[] } | undefined {
  const here = reading.predict(belief.mean);
  if (!sane(here)) return undefined;
  const at = Math.log(here);
  const gradient = new Array<number>(FACTOR_COUNT).fill(0);
  for (const f of reading.factors) {
    const i = indexOf(f);
    const step = sigmaAt(belief, i) / 2;
    if (step < 1e-6) continue;
    const moved = belief.mean.slice();
    moved[i] = (moved[i] as number) + step;
    const there = reading.predict(moved);
    if (sane(there)) gradient[i] = (Math.log(there) - at) / step;
  }
  return { at, gradient };
}

export interface Calibration {
  readonly belief: Belief;
  /** Readings that were used. */
  readonly used: number;
  readonly contradictions: readonly Contradiction[];
}

function absorb(prior: Belief, readings: readonly Reading[]): Calibration {
  let belief = prior;
  let used = 0;
  const contradictions: Contradiction[] = [];
  for (const r of readings) {
    const before = linearised(r, prior);
    if (before) {
      const off = Math.log(r.measured) - before.at;
      const sigmas = Math.abs(off) / Math.hypot(spreadOf(prior, before.gradient), r.sigma);
      if (sigmas > CONTRADICTION && Math.abs(off) > r.slack) {
        const { row, quantity, measured } = r;
        const believed = sigmas <= NOT_BELIEVED || Math.abs(off) < 1.5 * r.slack;
        contradictions.push({ row, quantity, measured, predicted: Math.exp(before.at), sigmas, used: believed });
        if (!believed) continue;
      }
    }
    // The gradient hardly changes with the level, the prediction does.
    const predicted = belief === prior ? undefined : r.predict(belief.mean);
    const now =
      belief === prior
        ? before
        : before && sane(predicted)
          ? { at: Math.log(predicted), gradient: before.gradient }
          : linearised(r, belief);
    if (!now) continue;
    const learnt = learn(belief, now.gradient, Math.log(r.measured) - now.at, r.sigma);
    const mean = learnt.mean.map((m, i) => {
      const reach = FARTHEST * sigmaAt(prior, i);
      return clamp(m, (prior.mean[i] as number) - reach, (prior.mean[i] as number) + reach);
    });
    belief = { mean, covariance: learnt.covariance };
    used++;
  }
  return { belief, used, contradictions };
}

/** Corrects what is believed about a motor and propeller by rows of a thrust stand at sea level. */
export function calibrateRotor(
  prior: Belief,
  motors: MotorsInput,
  propeller: PropellerInput,
  table: readonly ThrustRow[],
  air: Air = airAt(),
): Calibration {
  const rotorFor = (f: FactorVector) => rotorOf(motors, propeller, air, (name) => Math.exp(f[indexOf(name)] as number));
  return absorb(prior, rowReadings(table, rotorFor));
}

/** Corrects what is believed about a craft by its thrust table, then by its logged flight. */
export function calibrateCraft(prior: Belief, input: CraftInput): Calibration {
  const rows = calibrateRotor(prior, input.motors, input.propeller, input.thrustTable ?? []);
  const log = absorb(rows.belief, logReadings(input));
  return {
    belief: log.belief,
    used: rows.used + log.used,
    contradictions: [...rows.contradictions, ...log.contradictions],
  };
}
