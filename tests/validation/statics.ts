/**
 * Leaves each propeller of the static tests out in turn, fits the law of propeller.ts on the others, and measures the
 * error on the one left out. The form is the project's own; the coefficients are fitted anew each time.
 */
import type { StaticCase } from './cases';
import { combine, median, normalOf, quantile, relative, solveNormal } from './statistics';

/** Outline of the blade by the family's trade name: slow-flyers are wide, sport, racing and wooden ones narrow. */
const WIDE = new Set(['apcsf', 'gwssf']);
const NARROW = new Set(['apcsp', 'apccf', 'zin', 'kavfk', 'kyosho', 'ma', 'mas']);
/** Made for research and named by number: each is placed by thrust and power of its other propellers, never by that of the one tested. */
const RESEARCH = new Set(['da4002', 'da4022', 'da4052', 'nr640']);

export type Outlines = 'none' | 'by trade name' | 'and research families by their others';
type Outline = 'wide' | 'usual' | 'narrow';
type Placed = ReadonlyMap<string, Outline>;

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
  /** The median error of each propeller, in the order of the cases. */
  readonly byPropeller: readonly number[];
  /** Of the propellers below four inches. */
  readonly medianBelowFour: number;
}

const byName = (family: string): Outline => (WIDE.has(family) ? 'wide' : NARROW.has(family) ? 'narrow' : 'usual');

function features(c: StaticCase, outline: Outline): number[] {
  const x = Math.log(Math.min(1.5, Math.max(0.25, c.pitch / c.diameter)) / 0.7);
  return [1, x, x * x, Math.log(c.blades / 2), outline === 'wide' ? 1 : 0, outline === 'narrow' ? 1 : 0];
}

type Quantity = (ct: number, cp: number, tip: number) => number;

const thrustOf: Quantity = (ct, _cp, tip) => Math.log(ct) - CT_DRIFT * tip;
const loadingOf: Quantity = (ct, cp, tip) => Math.log(cp / ct ** 1.5) - LOADING_DRIFT * tip;

const valuesOf = (c: StaticCase, quantity: Quantity): readonly number[] =>
  c.rows.map((r) => quantity(r.ct, r.cp, Math.log((r.speed * c.diameter) / 20)));

const predictedBy = (beta: readonly number[], f: readonly number[]): number =>
  f.reduce((sum, v, i) => sum + v * beta[i]!, 0);

function lawOf(cases: readonly StaticCase[], quantity: Quantity, outlineOf: (c: StaticCase) => Outline): number[] {
  const normals = cases.map((c) => {
    const y = valuesOf(c, quantity);
    const f = features(c, outlineOf(c));
    return normalOf(
      y.map(() => f),
      y,
      1 / y.length,
    );
  });
  return solveNormal(normals.slice(1).reduce((sum, n) => combine(sum, n, 1), normals[0]!));
}

/** The outline of each research family among `cases` under which the laws of the families with a trade name meet its thrust and power best. */
function placed(cases: readonly StaticCase[]): Placed {
  const traded = cases.filter((c) => !RESEARCH.has(c.family));
  const found = new Map<string, Outline>();
  if (traded.length === 0) return found;
  const laws = [thrustOf, loadingOf].map((quantity) => ({
    quantity,
    beta: lawOf(traded, quantity, (c) => byName(c.family)),
  }));
  for (const family of new Set(cases.map((c) => c.family))) {
    if (!RESEARCH.has(family)) continue;
    const own = cases.filter((c) => c.family === family);
    const off = (outline: Outline): number =>
      Math.hypot(
        ...laws.map(({ quantity, beta }) =>
          median(own.map((c) => median(valuesOf(c, quantity)) - predictedBy(beta, features(c, outline)))),
        ),
      );
    const best = (['usual', 'wide', 'narrow'] as const).reduce((a, b) => (off(b) < off(a) ? b : a));
    found.set(family, best);
  }
  return found;
}

function outlinesAmong(cases: readonly StaticCase[], outlines: Outlines): (c: StaticCase) => Outline {
  if (outlines === 'none') return () => 'usual';
  const families: Placed = outlines === 'by trade name' ? new Map() : placed(cases);
  return (c) => families.get(c.family) ?? byName(c.family);
}

function leaveOneOut(cases: readonly StaticCase[], outlines: Outlines, quantity: Quantity) {
  const errors = cases.map((c) => {
    // The one that is left out has no say in anything, the outline of its family included.
    const others = cases.filter((other) => other !== c);
    const outlineOf = outlinesAmong(others, outlines);
    const predicted = predictedBy(lawOf(others, quantity, outlineOf), features(c, outlineOf(c)));
    return valuesOf(c, quantity).map((v) => relative(predicted - v));
  });
  const flat = errors.flat();
  const perPropeller = errors.map(median);
  const small = perPropeller.filter((_, i) => cases[i]!.diameter < 4 * 0.0254 - 1e-9);
  return {
    coefficients: lawOf(cases, quantity, outlinesAmong(cases, outlines)),
    errors: {
      median: median(flat),
      p90: quantile(flat, 0.9),
      medianByPropeller: median(perPropeller),
      p90ByPropeller: quantile(perPropeller, 0.9),
      byPropeller: perPropeller,
      medianBelowFour: median(small),
    },
  };
}

export function staticErrors(cases: readonly StaticCase[], outlines: Outlines): StaticErrors {
  const thrust = leaveOneOut(cases, outlines, thrustOf);
  const power = leaveOneOut(cases, outlines, loadingOf);
  return {
    outlines,
    propellers: cases.length,
    thrust: thrust.errors,
    power: power.errors,
    ct: thrust.coefficients,
    loading: power.coefficients,
  };
}
