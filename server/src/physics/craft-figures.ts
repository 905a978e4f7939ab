/**
 * The figures of a craft as the card shows them: values, typical ranges, notices, and what to measure next.
 * It composes the other files and must hold no physics of its own.
 */
import { type Basis, type Figure, figureOf, type Unit } from './bands';
import { type Calibration, calibrateCraft } from './calibrate';
import { type CraftInput, craftOf, faultOf, priorOf } from './craft';
import { type CraftValues, type FlightValues, type PointValues, valuesOfCraft } from './craft-values';
import { type Belief, FACTOR_COUNT, type Factor, indexOf, shareOf, sigmaAt, spreadOf } from './factors';
import { lazily } from './lazily';
import { craftNotices, type Notice } from './notices';
import { badInput, type Impossible, type Outcome, possible } from './result';

const POINT_UNITS: { readonly [K in keyof PointValues]: Unit } = {
  thrust: 'N',
  thrustToWeight: '1',
  throttle: '1',
  motorCurrent: 'A',
  escCurrent: 'A',
  packCurrent: 'A',
  power: 'W',
  busVoltage: 'V',
  cellVoltage: 'V',
  rpm: 'rpm',
  tipMach: '1',
  pitchSpeed: 'm/s',
  gramsPerWatt: 'g/W',
  discLoading: 'N/m²',
  motorHeat: 'W',
  escHeat: 'W',
};

const FLIGHT_UNITS: { readonly [K in keyof FlightValues]: Unit } = {
  minutes: 'min',
  usedMah: 'mAh',
  usedWh: 'Wh',
  meanCurrent: 'A',
  landingCellVoltage: 'V',
};

export type PointFigures = { readonly [K in keyof PointValues]: Figure };
export type FlightFigures = { readonly [K in keyof FlightValues]: Figure };

/** Something a builder can do to narrow a range. */
export type Measurement =
  | 'thrust-table'
  | 'motor-resistance'
  | 'no-load-current'
  | 'motor-kv'
  | 'controller'
  | 'pack-resistance'
  | 'pack-capacity'
  | 'craft-mass'
  | 'logged-flight';

const MEASUREMENT_OF: Readonly<Record<Factor, Measurement>> = {
  thrust: 'thrust-table',
  power: 'thrust-table',
  resistance: 'motor-resistance',
  loss: 'no-load-current',
  kv: 'motor-kv',
  partLoad: 'controller',
  throttle: 'controller',
  packResistance: 'pack-resistance',
  capacity: 'pack-capacity',
  mass: 'craft-mass',
  flying: 'logged-flight',
};

export interface Narrowing {
  readonly measure: Measurement;
  /** Share 0 … 1 of the figure's variance that knowing it would take away. */
  readonly share: number;
}

export interface CraftFigures {
  readonly full: Outcome<PointFigures>;
  readonly fullSagged: Outcome<PointFigures>;
  readonly hover: Outcome<PointFigures>;
  readonly cruise: Outcome<PointFigures>;
  readonly punch: Outcome<PointFigures>;
  readonly hovering: Outcome<FlightFigures>;
  readonly asFlown: Outcome<FlightFigures>;
  readonly notices: readonly Notice[];
  /** The two best things to measure, best first; empty where there is no figure. */
  readonly narrows: { readonly flightTime: readonly Narrowing[]; readonly thrust: readonly Narrowing[] };
  readonly basis: Basis;
  /** Readings of stand and log that went in. */
  readonly readingsUsed: number;
}

/** Values without ranges: the fast path. Never throws; what has no answer is typed. */
export function values(input: CraftInput): CraftValues {
  const fault = faultOf(input);
  return fault === undefined
    ? valuesOfCraft(craftOf(input, calibrated(input).belief.mean))
    : everywhere(badInput(fault));
}

/** Values with typical ranges, notices and advice. Never throws; what has no answer is typed. */
export function figures(input: CraftInput): CraftFigures {
  const fault = faultOf(input);
  if (fault !== undefined) {
    const nothing = { notices: [], narrows: { flightTime: [], thrust: [] }, readingsUsed: 0 };
    return { ...everywhere(badInput(fault)), ...nothing, basis: 'modelled' };
  }
  const { belief, used, contradictions } = calibrated(input);
  const basis: Basis = used > 0 ? 'calibrated' : 'modelled';
  const here = valuesOfCraft(craftOf(input, belief.mean));
  const moves = neighbours(input, belief);
  const point = (pick: (v: CraftValues) => Outcome<PointValues>) =>
    spread(pick, here, POINT_UNITS, belief, basis, moves);
  const flight = (pick: (v: CraftValues) => Outcome<FlightValues>) =>
    spread(pick, here, FLIGHT_UNITS, belief, basis, moves);
  const advice = (pick: (v: CraftValues) => number | undefined): Narrowing[] => {
    const value = pick(here);
    return value === undefined ? [] : best(belief, gradientOf(value, moves, pick));
  };
  return lazily<CraftFigures>({
    full: () => point((v) => v.full),
    fullSagged: () => point((v) => v.fullSagged),
    hover: () => point((v) => v.hover),
    cruise: () => point((v) => v.cruise),
    punch: () => point((v) => v.punch),
    hovering: () => flight((v) => v.hovering),
    asFlown: () => flight((v) => v.asFlown),
    notices: () => craftNotices(input, here, contradictions),
    narrows: () => ({
      flightTime: advice((v) => (v.asFlown.ok ? v.asFlown.value.minutes : undefined)),
      thrust: advice((v) => (v.full.ok ? v.full.value.thrust : undefined)),
    }),
    basis: () => basis,
    readingsUsed: () => used,
  });
}

const calibrated = (input: CraftInput): Calibration => calibrateCraft(priorOf(input), input);

const everywhere = (no: Impossible) => ({
  full: no,
  fullSagged: no,
  hover: no,
  cruise: no,
  punch: no,
  hovering: no,
  asFlown: no,
});

/** The craft with one factor moved by a step, or undefined for a factor that is not doubtful. */
interface Neighbour {
  readonly step: number;
  readonly values: () => CraftValues;
  /** The opposite step, tried where the first has no answer. */
  readonly opposite: () => CraftValues;
}

function neighbours(input: CraftInput, belief: Belief): (Neighbour | undefined)[] {
  return Array.from({ length: FACTOR_COUNT }, (_, i) => {
    const step = sigmaAt(belief, i);
    if (step < 1e-6) return undefined;
    const moved = (by: number): CraftValues => {
      const mean = belief.mean.slice();
      mean[i] = (mean[i] as number) + by;
      return valuesOfCraft(craftOf(input, mean));
    };
    let one: CraftValues | undefined;
    let other: CraftValues | undefined;
    return { step, values: () => (one ??= moved(step)), opposite: () => (other ??= moved(-step)) };
  });
}

/** Change of the logarithm of a quantity by each factor; zero where neither neighbour has an answer. */
function gradientOf(
  here: number,
  moves: readonly (Neighbour | undefined)[],
  pick: (v: CraftValues) => number | undefined,
): number[] {
  return moves.map((m) => {
    if (!m || !(here > 0)) return 0;
    const there = pick(m.values());
    if (there !== undefined && there > 0) return Math.log(there / here) / m.step;
    const back = pick(m.opposite());
    return back !== undefined && back > 0 ? Math.log(here / back) / m.step : 0;
  });
}

/** One group of values with the range of each. */
function spread<K extends string>(
  pick: (v: CraftValues) => Outcome<{ readonly [P in K]: number }>,
  here: CraftValues,
  units: { readonly [P in K]: Unit },
  belief: Belief,
  basis: Basis,
  moves: readonly (Neighbour | undefined)[],
): Outcome<{ readonly [P in K]: Figure }> {
  const group = pick(here);
  if (!group.ok) return group;
  const out = {} as { [P in K]: Figure };
  for (const key of Object.keys(units) as K[]) {
    const value = group.value[key];
    out[key] = new RangedWhenAsked(value, units[key], basis, () => {
      const gradient = gradientOf(value, moves, (v) => {
        const there = pick(v);
        return there.ok ? there.value[key] : undefined;
      });
      return figureOf(value, spreadOf(belief, gradient), units[key], basis, key === 'throttle' ? 1 : undefined);
    });
  }
  return possible(out);
}

/** A figure whose range, the dear part of it, is worked out when somebody looks at it. */
class RangedWhenAsked implements Figure {
  readonly #make: () => Figure;
  #made: Figure | undefined;

  constructor(
    readonly value: number,
    readonly unit: Unit,
    readonly basis: Basis,
    make: () => Figure,
  ) {
    this.#make = make;
  }

  get low(): number {
    return this.#ranged().low;
  }

  get high(): number {
    return this.#ranged().high;
  }

  #ranged(): Figure {
    this.#made ??= this.#make();
    return this.#made;
  }
}

// Whoever goes over the fields of a figure finds the ends of its range among them.
Object.defineProperties(RangedWhenAsked.prototype, { low: { enumerable: true }, high: { enumerable: true } });

/** The two measurements that take away most of the variance. */
function best(belief: Belief, gradient: readonly number[]): Narrowing[] {
  const shares = new Map<Measurement, number>();
  for (const f of Object.keys(MEASUREMENT_OF) as Factor[]) {
    const measure = MEASUREMENT_OF[f];
    shares.set(measure, Math.min(1, (shares.get(measure) ?? 0) + shareOf(belief, gradient, indexOf(f))));
  }
  return [...shares]
    .map(([measure, share]) => ({ measure, share }))
    .filter((n) => n.share > 0.01)
    .sort((a, b) => b.share - a.share)
    .slice(0, 2);
}
