/**
 * What is uncertain about a craft: one factor for each doubtful quantity, in logarithms around the model's own value,
 * and how far each may be off. It must not know how a factor acts on the model.
 */

export const FACTORS = [
  /** Thrust at a speed. */
  'thrust',
  /** Shaft power at a thrust. */
  'power',
  /** Whole-path resistance of a motor. */
  'resistance',
  /** Loss torque of a motor. */
  'loss',
  'kv',
  /** Part-load loss of controller and motor. */
  'partLoad',
  /** Duty at zero throttle: added, not multiplied. */
  'throttle',
  'packResistance',
  'capacity',
  'mass',
  /** How hard the pilot flies against the stated mix. */
  'flying',
] as const;

export type Factor = (typeof FACTORS)[number];

/** Logarithms of the factors in the order of `FACTORS`; all zero is the model's own value. */
export type FactorVector = readonly number[];

export const FACTOR_COUNT = FACTORS.length;
export const indexOf = (f: Factor): number => FACTORS.indexOf(f);
export const NO_CHANGE: FactorVector = FACTORS.map(() => 0);

/** Mean and covariance (row by row) of the factors. */
export interface Belief {
  readonly mean: FactorVector;
  readonly covariance: readonly number[];
}

/** A belief of independent factors around a mean of zero. @param sigmas standard deviations in the order of `FACTORS` */
export function independent(sigmas: readonly number[]): Belief {
  const covariance = new Array<number>(FACTOR_COUNT * FACTOR_COUNT).fill(0);
  for (let i = 0; i < FACTOR_COUNT; i++) covariance[i * FACTOR_COUNT + i] = (sigmas[i] as number) ** 2;
  return { mean: NO_CHANGE, covariance };
}

export const sigmaAt = (b: Belief, i: number): number =>
  Math.sqrt(Math.max(0, b.covariance[i * FACTOR_COUNT + i] as number));

/**
 * One measurement taken into a belief (the scalar Kalman update).
 * @param gradient change of the predicted quantity by each factor
 * @param innovation measured less predicted
 * @param sigma standard deviation of the measurement
 */
export function learn(b: Belief, gradient: readonly number[], innovation: number, sigma: number): Belief {
  const n = FACTOR_COUNT;
  const pg = new Array<number>(n);
  let s = sigma * sigma;
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += (b.covariance[i * n + j] as number) * (gradient[j] as number);
    pg[i] = sum;
    s += sum * (gradient[i] as number);
  }
  if (!(s > 0)) return b;
  const mean = b.mean.map((m, i) => m + ((pg[i] as number) / s) * innovation);
  const covariance = b.covariance.map((c, k) => c - ((pg[Math.floor(k / n)] as number) * (pg[k % n] as number)) / s);
  return { mean, covariance };
}

/** Standard deviation that a belief gives to a quantity with this gradient. */
export function spreadOf(b: Belief, gradient: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < FACTOR_COUNT; i++)
    for (let j = 0; j < FACTOR_COUNT; j++)
      sum += (gradient[i] as number) * (gradient[j] as number) * (b.covariance[i * FACTOR_COUNT + j] as number);
  return Math.sqrt(Math.max(0, sum));
}

/** Share 0 … 1 of a quantity's variance that would go if factor `i` were known exactly. */
export function shareOf(b: Belief, gradient: readonly number[], i: number): number {
  const variance = spreadOf(b, gradient) ** 2;
  const own = b.covariance[i * FACTOR_COUNT + i] as number;
  if (!(variance > 0) || !(own > 0)) return 0;
  let along = 0;
  for (let j = 0; j < FACTOR_COUNT; j++)
    along += (b.covariance[i * FACTOR_COUNT + j] as number) * (gradient[j] as number);
  return Math.min(1, (along * along) / own / variance);
}
