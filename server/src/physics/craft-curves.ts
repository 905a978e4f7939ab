/**
 * A craft over its throttle and over its discharge, each point with its typical range: what plots show between the
 * figures of the card. It composes the other files and must hold no physics of its own.
 */
import { type Basis, type Figure, figureOf, type Unit } from './bands';
import { calibrateCraft } from './calibrate';
import { type Craft, type CraftInput, craftOf, faultOf, priorOf } from './craft';
import { atThrottle, loadedOver } from './craft-values';
import { type Belief, FACTOR_COUNT, sigmaAt, spreadOf } from './factors';

export interface ThrottlePoint {
  /** 0 … 1 */
  readonly throttle: number;
  /** N, whole craft. */
  readonly thrust: Figure;
  /** A out of the pack. */
  readonly current: Figure;
  readonly efficiency: Figure;
}

/** At half of the usable charge, as the card's hover. Throttles without an answer are left out. Never throws. */
export function throttleCurve(input: CraftInput, throttles: readonly number[]): readonly ThrottlePoint[] {
  const around = surroundings(input);
  if (!around) return [];
  return throttles.flatMap((throttle) => {
    const at = (craft: Craft): Readonly<Record<'thrust' | 'current' | 'efficiency', number | undefined>> => {
      const point = atThrottle(craft, throttle);
      return point.ok
        ? { thrust: point.value.thrust, current: point.value.packCurrent, efficiency: point.value.gramsPerWatt }
        : { thrust: undefined, current: undefined, efficiency: undefined };
    };
    const ranged = rangesOf(around, at, { thrust: 'N', current: 'A', efficiency: 'g/W' });
    const { thrust, current, efficiency } = ranged;
    return thrust && current && efficiency ? [{ throttle, thrust, current, efficiency }] : [];
  });
}

export interface ChargePoint {
  /** Left in the pack, 0 … 1. */
  readonly charge: number;
  /** V of a cell under load; nothing where the pack cannot do it any more. */
  readonly hovering: Figure | undefined;
  readonly flown: Figure | undefined;
  readonly full: Figure | undefined;
}

export function dischargeCurve(input: CraftInput, charges: readonly number[]): readonly ChargePoint[] {
  const around = surroundings(input);
  if (!around) return [];
  const loaded = new Map(
    [around.here, ...around.moved.map(({ craft }) => craft)].map((craft) => [craft, loadedOver(craft)]),
  );
  return charges.map((charge) => ({
    charge,
    ...rangesOf(around, (craft) => loaded.get(craft)!(charge), { hovering: 'V', flown: 'V', full: 'V' }),
  }));
}

/** The craft as it is believed to be, and with each doubtful factor moved by a step. */
interface Surroundings {
  readonly belief: Belief;
  readonly basis: Basis;
  readonly here: Craft;
  readonly moved: readonly { readonly factor: number; readonly step: number; readonly craft: Craft }[];
}

function surroundings(input: CraftInput): Surroundings | undefined {
  if (faultOf(input) !== undefined) return undefined;
  const { belief, used } = calibrateCraft(priorOf(input), input);
  const moved = Array.from({ length: FACTOR_COUNT }, (_, factor) => {
    const step = sigmaAt(belief, factor);
    const mean = belief.mean.slice();
    mean[factor] = (mean[factor] as number) + step;
    return { factor, step, mean };
  })
    .filter(({ step }) => step >= 1e-6)
    .map(({ factor, step, mean }) => ({ factor, step, craft: craftOf(input, mean) }));
  return { belief, basis: used > 0 ? 'calibrated' : 'modelled', here: craftOf(input, belief.mean), moved };
}

function rangesOf<K extends string>(
  { belief, basis, here, moved }: Surroundings,
  at: (craft: Craft) => Readonly<Record<K, number | undefined>>,
  units: Readonly<Record<K, Unit>>,
): Readonly<Record<K, Figure | undefined>> {
  const values = at(here);
  const there = moved.map(({ factor, step, craft }) => ({ factor, step, values: at(craft) }));
  const out = {} as Record<K, Figure | undefined>;
  for (const key of Object.keys(units) as K[]) {
    const value = values[key];
    if (value === undefined || !(value > 0)) continue;
    const gradient = new Array<number>(FACTOR_COUNT).fill(0);
    for (const one of there) {
      const other = one.values[key];
      if (other !== undefined && other > 0) gradient[one.factor] = Math.log(other / value) / one.step;
    }
    out[key] = figureOf(value, spreadOf(belief, gradient), units[key], basis);
  }
  return out;
}
