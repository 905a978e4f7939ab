/** Flight time over the capacity of the pack, and the voltage under load over a flight. Lays out what the physics and the card say. */
import { type CraftFigures, type CraftInput, dischargeCurve, figures, landingVoltage, values } from '../../../physics';
import { valueChanges, vary } from '../../../plan/vary';
import { numberField } from '../../../plan/vary-field';
import { type CardFigure, cardFigure, exactly } from '../../card-figure';
import { figureText, scaledFigure, valueText } from '../../figure-text';
import type { Flown } from './flown';
import type { Mark, PlotPoint, PlotView, Series } from './plot-view';
import type { Spots } from './spots';

/** Of the pack's own capacity. Ranges take ten times as long as values, so they are worked out at its own and at both ends. */
const sizes = [0.5, 0.75, 1, 1.4, 2];
const withRange = new Set([0.5, 1, 2]);

const kinds = [
  ['asFlown', 'as you fly it'],
  ['hovering', 'hovering'],
] as const;

export function timePlots(base: Flown, trial: Flown | undefined, spots: Spots): readonly PlotView[] {
  return [capacityPlot(base, trial, spots), dischargePlot(base, trial, spots)].filter((plot) => plot !== undefined);
}

function capacityPlot(base: Flown, trial: Flown | undefined, spots: Spots): PlotView | undefined {
  const { craft, pack, figures: own } = base;
  const capacity = pack?.facts.capacity;
  if (!pack || !capacity || !own) return undefined;
  const found = numberField(craft, `packs.${pack.name}.capacity`, pack);
  if (!found.ok) return undefined;
  const changes = sizes.map((size) => {
    const milli =
      size === 1 ? capacity.value * 1000 : Math.max(10, Math.round((capacity.value * size * 1000) / 10) * 10);
    return { value: milli / 1000, label: `${milli} mAh` };
  });
  const rows = vary({ craft, pack }, valueChanges(found.field, changes)).rows.map((row, i) => ({
    milli: row.value! * 1000,
    label: row.label,
    grams: exactly('weight-ready', '', row.weight.ready.value, 'kg', 'said'),
    times: row.value === capacity.value ? timesOf(own) : row.input && timesAt(row.input, withRange.has(sizes[i]!)),
  }));
  const series = kinds.map(
    ([kind, words]): Series => ({
      words,
      trial: false,
      points: rows.flatMap((row): PlotPoint[] => {
        const figure = row.times?.[kind];
        if (!figure) return [];
        const { value, low, high } = scaledFigure(figure);
        return [{ x: row.milli, y: value, ...(low < high ? { low, high } : {}) }];
      }),
    }),
  );
  const markOf = (flown: Flown, words: string): readonly Mark[] => {
    const times = flown.figures && timesOf(flown.figures);
    const minutes = kinds.flatMap(([kind]) => times?.[kind] ?? []);
    const own = flown.pack?.facts.capacity;
    if (!own || minutes.length === 0) return [];
    return [
      {
        x: own.value * 1000,
        dots: minutes.map((figure) => scaledFigure(figure).value),
        words: `${words}: ${minutes.map(valueText).join(' and ')}`,
        trial: flown.label !== undefined,
        spot: spots.spot(own, `packs.${pack.name}`),
      },
    ];
  };
  const marks = [...markOf(base, `${pack.name}, ${capacity.text}`), ...(trial ? markOf(trial, trial.label!) : [])];
  return {
    id: 'capacity',
    title: 'Flight time over the capacity of the pack',
    description: `Flight time if the pack had more or less capacity at its own weight for its energy. ${marks.map((mark) => mark.words).join('; ')}.`,
    across: { words: 'capacity', unit: 'mAh', fromZero: false },
    up: { words: 'flight time', unit: 'min', fromZero: true },
    series,
    marks,
    limits: [],
    table: {
      heads: ['capacity', 'ready to fly', ...kinds.map(([, words]) => words)],
      rows: rows.map((row) => [
        row.label,
        valueText(row.grams),
        ...kinds.map(([kind]) => {
          const figure = row.times?.[kind];
          return figure ? figureText(figure) : 'cannot be';
        }),
      ]),
    },
  };
}

type Times = Readonly<Record<'asFlown' | 'hovering', CardFigure | undefined>>;

const timesOf = ({ asFlown, hovering }: CraftFigures): Times => ({
  asFlown: asFlown.ok ? cardFigure('time', '', asFlown.value.minutes) : undefined,
  hovering: hovering.ok ? cardFigure('time', '', hovering.value.minutes) : undefined,
});

function timesAt(input: CraftInput, ranged: boolean): Times {
  if (ranged) return timesOf(figures(input));
  const { asFlown, hovering } = values(input);
  const plain = (flight: typeof asFlown): CardFigure | undefined =>
    flight.ok ? exactly('time', '', flight.value.minutes * 60, 's', 'modelled') : undefined;
  return { asFlown: plain(asFlown), hovering: plain(hovering) };
}

const charges = [1, 0.93, 0.83, 0.7, 0.55, 0.4, 0.25, 0.13, 0.06];

/** In the order of the plot beside it, so that each way of flying has one look in both. */
const loads = [
  ['flown', 'as you fly it'],
  ['hovering', 'hovering'],
  ['full', 'full throttle'],
] as const;

function dischargePlot(
  { pack, input, figures: own }: Flown,
  trial: Flown | undefined,
  spots: Spots,
): PlotView | undefined {
  if (!pack || !input) return undefined;
  const curve = dischargeCurve(input, charges);
  const milli = (charge: number, capacity = input.pack.capacity): number => (1 - charge) * capacity * 1000;
  const volts = (figure: Parameters<typeof cardFigure>[2]): CardFigure => cardFigure('voltage', '', figure);
  const pointsOf = (of: typeof curve, key: 'hovering' | 'flown' | 'full', capacity?: number): readonly PlotPoint[] =>
    of.flatMap((point) => {
      const figure = point[key];
      if (!figure) return [];
      const { value, low, high } = scaledFigure(volts(figure));
      return [{ x: milli(point.charge, capacity), y: value, low, high }];
    });
  const series: Series[] = loads.map(([key, words]) => ({ words, trial: false, points: pointsOf(curve, key) }));
  if (trial?.input)
    series.push({
      words: `as you fly it, with ${trial.label}`,
      trial: true,
      points: pointsOf(dischargeCurve(trial.input, charges), 'flown', trial.input.pack.capacity),
    });
  const limit = exactly('landing-limit', '', landingVoltage(input.pack), 'V', 'said');
  const marks: Mark[] = [];
  if (own?.asFlown.ok) {
    const used = cardFigure('charge-used', '', own.asFlown.value.usedMah);
    const lands = cardFigure('landing-cell-voltage', '', own.asFlown.value.landingCellVoltage);
    marks.push({
      x: scaledFigure(used).value,
      dots: [],
      words: `lands at ${valueText(lands)} after ${valueText(used)}`,
      trial: false,
      spot: spots.spot(pack.facts['landing-voltage'] ?? pack.facts.capacity, `packs.${pack.name}`),
    });
  }
  return {
    id: 'discharge',
    title: 'Voltage of a cell under load over a flight',
    description: `What a cell still shows while it is flown, from full to empty. ${marks.map((mark) => mark.words).join('; ')}. Not below ${valueText(limit)}.`,
    across: { words: 'taken out of the pack', unit: 'mAh', fromZero: true },
    up: { words: 'a cell under load', unit: 'V', fromZero: false },
    series,
    marks,
    limits: [{ y: scaledFigure(limit).value, words: `not below ${valueText(limit)}` }],
    table: {
      heads: ['taken out', 'left', ...loads.map(([, words]) => words)],
      rows: curve.map((point) => [
        `${Math.round(milli(point.charge))} mAh`,
        `${Math.round(point.charge * 100)} %`,
        ...loads.map(([key]) => {
          const figure = point[key];
          return figure ? figureText(volts(figure)) : 'cannot be';
        }),
      ]),
    },
  };
}
