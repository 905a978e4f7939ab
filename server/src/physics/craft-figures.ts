/**
 * The figures of a craft as the card shows them: values, typical ranges, notices, and what to measure next.
 * It composes the other files and must hold no physics of its own.
 */
import { type Basis, type Figure, figureOf, type Unit } from './bands';
import { type Calibration, calibrateCraft } from './calibrate';
import { type CraftInput, craftOf, faultOf, priorOf } from './craft';
import { type CraftValues, type FlightValues, type PointValues, valuesOfCraft } from './craft-values';
import { type Belief, FACTOR_COUNT, type Factor, indexOf, shareOf, sigmaAt, spreadOf } from './factors';
import { craftNotices, type Notice } from './notices';
import { impossible, type Outcome, possible } from './result';

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

const POINTS = ['full', 'fullSagged', 'hover', 'cruise', 'punch'] as const;
const FLIGHTS = ['hovering', 'asFlown'] as const;

const allImpossible = (field: string): CraftValues => {
  const no = impossible('bad-input', { [field]: 0 });
  return { full: no, fullSagged: no, hover: no, cruise: no, punch: no, hovering: no, asFlown: no };
};

const calibrated = (input: CraftInput): Calibration => calibrateCraft(priorOf(input), input);

/** Values without ranges: the fast path. Never throws; what has no answer is typed. */
export function values(input: CraftInput): CraftValues {
  const fault = faultOf(input);
  if (fault !== undefined) return allImpossible(fault);
  return valuesOfCraft(craftOf(input, calibrated(input).belief.mean));
}

/** Values with typical ranges, notices and advice. Never throws; what has no answer is typed. */
export function figures(input: CraftInput): CraftFigures {
  const fault = faultOf(input);
  if (fault !== undefined)
    return {
      ...(allImpossible(fault) as Record<
        (typeof POINTS)[number] | (typeof FLIGHTS)[number],
        ReturnType<typeof impossible>
      >),
      notices: [],
      narrows: { flightTime: [], thrust: [] },
      basis: 'modelled',
      readingsUsed: 0,
    };
  const { belief, used, contradictions } = calibrated(input);
  const basis: Basis = used > 0 ? 'calibrated' : 'modelled';
  const base = valuesOfCraft(craftOf(input, belief.mean));
  const moves = neighbours(input, belief);
  const point = (key: (typeof POINTS)[number]): Outcome<PointFigures> => {
    const here = base[key];
    if (!here.ok) return here;
    return possible(
      spread(here.value, POINT_UNITS, belief, basis, moves, (v) => {
        const there = v[key];
        return there.ok ? there.value : undefined;
      }),
    );
  };
  const flight = (key: (typeof FLIGHTS)[number]): Outcome<FlightFigures> => {
    const here = base[key];
    if (!here.ok) return here;
    return possible(
      spread(here.value, FLIGHT_UNITS, belief, basis, moves, (v) => {
        const there = v[key];
        return there.ok ? there.value : undefined;
      }),
    );
  };
  const flightTime = base.asFlown;
  const thrust = base.full;
  return {
    full: point('full'),
    fullSagged: point('fullSagged'),
    hover: point('hover'),
    cruise: point('cruise'),
    punch: point('punch'),
    hovering: flight('hovering'),
    asFlown: flight('asFlown'),
    notices: craftNotices(input, base, contradictions),
    narrows: {
      flightTime: flightTime.ok
        ? best(
            belief,
            gradientOf(flightTime.value.minutes, moves, (v) => (v.asFlown.ok ? v.asFlown.value.minutes : undefined)),
          )
        : [],
      thrust: thrust.ok
        ? best(
            belief,
            gradientOf(thrust.value.thrust, moves, (v) => (v.full.ok ? v.full.value.thrust : undefined)),
          )
        : [],
    },
    basis,
    readingsUsed: used,
  };
}

/** The craft with one factor moved by a step, or undefined for a factor that is not doubtful. */
interface Neighbour {
  readonly step: number;
  readonly values: CraftValues;
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
    let other: CraftValues | undefined;
    return { step, values: moved(step), opposite: () => (other ??= moved(-step)) };
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
    const there = pick(m.values);
    if (there !== undefined && there > 0) return Math.log(there / here) / m.step;
    const back = pick(m.opposite());
    return back !== undefined && back > 0 ? Math.log(here / back) / m.step : 0;
  });
}

function spread<K extends string>(
  here: { readonly [P in K]: number },
  units: { readonly [P in K]: Unit },
  belief: Belief,
  basis: Basis,
  moves: readonly (Neighbour | undefined)[],
  group: (v: CraftValues) => { readonly [P in K]: number } | undefined,
): { readonly [P in K]: Figure } {
  const out = {} as { [P in K]: Figure };
  for (const key of Object.keys(units) as K[]) {
    const gradient = gradientOf(here[key], moves, (v) => group(v)?.[key]);
    out[key] = figureOf(here[key], spreadOf(belief, gradient), units[key], basis);
  }
  return out;
}

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
