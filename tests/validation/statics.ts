/**
 * Leaves each propeller of the static tests out in turn, fits the law of propeller.ts on the others, and measures the
 * error on the one left out. The form is the project's own; the coefficients are fitted anew each time.
 */
import type { StaticCase } from './cases';
import { combine, median, normalOf, quantile, relative, solveNormal } from './statistics';

/** Outline of the blade by the family's trade name: slow-flyers are wide, sport, racing and wooden ones narrow. */
const WIDE = new Set(['apcsf', 'gwssf']);
const NARROW = new Set(['apcsp', 'apccf', 'zin', 'kavfk', 'kyosho', 'ma', 'mas']);
/** Two families of research propellers have no trade name; these were placed after looking at their thrust. */
const WIDE_BY_THRUST = new Set(['da4022']);
const NARROW_BY_THRUST = new Set(['nr640']);

export type Outlines = 'none' | 'by trade name' | 'and two research families';

const CT_DRIFT = 0.06;
const LOADING_DRIFT = -0.18;

export interface StaticErrors {
  readonly outlines: Outlines;
  readonly propellers: number;
  readonly thrust: Errors;
  readonly power: Errors;
  /** Coefficients of ln CT and ln K fitted on everything: level, pitch, curve, blades, wide, narrow. */
  readonly ct: readonly number[];
  readonly loading: readonly number[];
}

export interface Errors {
  /** Over all rows. */
  readonly median: number;
  readonly p90: number;
  /** Of the median error of each propeller. */
  readonly medianByPropeller: number;
  readonly p90ByPropeller: number;
  /** Of the propellers below four inches. */
  readonly medianBelowFour: number;
}

function features(c: StaticCase, outlines: Outlines): number[] {
  const x = Math.log(Math.min(1.5, Math.max(0.25, c.pitch / c.diameter)) / 0.7);
  const named = outlines !== 'none';
  const placed = outlines === 'and two research families';
  const wide = (named && WIDE.has(c.family)) || (placed && WIDE_BY_THRUST.has(c.family));
  const narrow = (named && NARROW.has(c.family)) || (placed && NARROW_BY_THRUST.has(c.family));
  return [1, x, x * x, Math.log(c.blades / 2), wide ? 1 : 0, narrow ? 1 : 0];
}

function leaveOneOut(
  cases: readonly StaticCase[],
  outlines: Outlines,
  quantity: (ct: number, cp: number, tip: number) => number,
) {
  const normals = cases.map((c) => {
    const f = features(c, outlines);
    const y = c.rows.map((r) => quantity(r.ct, r.cp, Math.log((r.speed * c.diameter) / 20)));
    return {
      y,
      f,
      normal: normalOf(
        c.rows.map(() => f),
        y,
        1 / c.rows.length,
      ),
    };
  });
  const all = normals.slice(1).reduce((sum, n) => combine(sum, n.normal, 1), normals[0]!.normal);
  const errors = normals.map(({ y, f, normal }) => {
    const beta = solveNormal(combine(all, normal, -1));
    const predicted = f.reduce((sum, v, i) => sum + v * beta[i]!, 0);
    return y.map((v) => relative(predicted - v));
  });
  const flat = errors.flat();
  const perPropeller = errors.map(median);
  const small = perPropeller.filter((_, i) => cases[i]!.diameter < 4 * 0.0254 - 1e-9);
  return {
    coefficients: solveNormal(all),
    errors: {
      median: median(flat),
      p90: quantile(flat, 0.9),
      medianByPropeller: median(perPropeller),
      p90ByPropeller: quantile(perPropeller, 0.9),
      medianBelowFour: median(small),
    },
  };
}

export function staticErrors(cases: readonly StaticCase[], outlines: Outlines): StaticErrors {
  const thrust = leaveOneOut(cases, outlines, (ct, _cp, tip) => Math.log(ct) - CT_DRIFT * tip);
  const power = leaveOneOut(cases, outlines, (ct, cp, tip) => Math.log(cp / ct ** 1.5) - LOADING_DRIFT * tip);
  return {
    outlines,
    propellers: cases.length,
    thrust: thrust.errors,
    power: power.errors,
    ct: thrust.coefficients,
    loading: power.coefficients,
  };
}
