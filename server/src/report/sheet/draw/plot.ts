/** Draws a plot: scales, ticks and paths by the d3 modules, words where nothing can lie over them. Computes no figure. */
import { scaleLinear } from 'd3-scale';
import { area, curveMonotoneX, line } from 'd3-shape';
import type { PlotPoint, PlotView, Series } from '../view/plot-view';
import { linkedTo, type Picture } from './picture';
import { el, type Markup } from './svg';

const width = 380;
const em = 11;
const [left, right] = [44, 20];
const plotHeight = 158;
/** Width of a letter as a share of its height, on the wide side. */
const letter = 0.56;

export function plotPicture(view: PlotView, linked: boolean): Picture | undefined {
  const shown = view.series.filter(({ points }) => points.length > 1);
  if (shown.length === 0) return undefined;
  const legend = flow(
    [...shown.map(({ words }) => words), ...view.limits.map(({ words }) => words)].map((words) => ({
      words,
      width: 30 + words.length * em * letter,
    })),
    width - 8,
  );
  const legendRows = Math.max(...legend.map(({ row }) => row)) + 1;
  const x = scaleLinear(
    extent(shown, (point) => [point.x], view.across.fromZero),
    [left, width - right],
  );
  const marks = rowsOfMarks(view, x);
  const markRows = Math.max(0, ...marks.map(({ row }) => row + 1));
  const top = 8 + legendRows * 16 + 14 + markRows * 14;
  const floor = top + plotHeight;
  const heights = extent(shown, (point) => [point.low ?? point.y, point.high ?? point.y], view.up.fromZero, [
    ...view.limits.map(({ y }) => y),
    ...view.marks.flatMap(({ dots }) => dots),
  ]);
  const y = scaleLinear(heights, [floor, top]).nice(5);
  const curve = line<PlotPoint>()
    .x((point) => x(point.x))
    .y((point) => y(point.y))
    .curve(curveMonotoneX);
  const band = area<PlotPoint>()
    .x((point) => x(point.x))
    .y0((point) => y(point.low ?? point.y))
    .y1((point) => y(point.high ?? point.y))
    .curve(curveMonotoneX);
  const kinds = kindsOf(shown);
  const [acrossText, upText] = [x.tickFormat(6), y.tickFormat(5)];
  const body: Markup[] = [
    ...y
      .ticks(5)
      .flatMap((tick) => [
        el('line', { class: 'grid', x1: left, y1: y(tick), x2: width - right, y2: y(tick) }),
        el('text', { class: 'q', x: left - 6, y: y(tick) + 4, 'text-anchor': 'end' }, upText(tick)),
      ]),
    ...x
      .ticks(6)
      .flatMap((tick) => [
        el('line', { class: 'grid', x1: x(tick), y1: floor, x2: x(tick), y2: floor + 4 }),
        el('text', { class: 'q', x: x(tick), y: floor + 16, 'text-anchor': 'middle' }, acrossText(tick)),
      ]),
    el('line', { class: 'base', x1: left, y1: floor, x2: width - right, y2: floor }),
    el('text', { class: 'q', x: 4, y: top - markRows * 14 - 6 }, axisWords(view.up)),
    el('text', { class: 'q', x: width - right, y: floor + 31, 'text-anchor': 'end' }, axisWords(view.across)),
    ...shown.map((series, i) =>
      el('path', { class: `band ${kinds[i]}`, d: band(series.points.filter(({ low }) => low !== undefined)) ?? '' }),
    ),
    ...view.limits.map((limit) =>
      el('line', { class: 'limit', x1: left, y1: y(limit.y), x2: width - right, y2: y(limit.y) }),
    ),
    ...shown.map((series, i) => el('path', { class: `curve ${kinds[i]}`, d: curve([...series.points]) ?? '' })),
    ...marks.map(({ mark, row, at, anchor }) =>
      el(
        'g',
        linkedTo(mark.spot, mark.words, linked),
        el('line', {
          class: 'mark',
          x1: x(mark.x),
          y1: top - (markRows - row) * 14 + 12,
          x2: x(mark.x),
          y2: floor,
        }),
        el('text', { x: at, y: top - (markRows - row) * 14 + 9, 'text-anchor': anchor }, mark.words),
        ...mark.dots.map((dot, i) =>
          el('circle', { class: `dot ${mark.trial ? 'trial' : kinds[i]}`, cx: x(mark.x), cy: y(dot), r: 4 }),
        ),
      ),
    ),
    ...legend.map(({ words, row, at }, i) => {
      const height = 14 + row * 16;
      return el(
        'g',
        {},
        el('line', {
          class: i < shown.length ? `curve ${kinds[i]}` : 'limit',
          x1: 4 + at,
          y1: height - 4,
          x2: 24 + at,
          y2: height - 4,
        }),
        el('text', { x: 28 + at, y: height }, words),
      );
    }),
  ];
  return {
    id: view.id,
    kind: 'plot',
    title: view.title,
    description: view.description,
    box: [0, 0, width, floor + 38],
    em,
    unit: 'px',
    linked,
    body,
  };
}

const axisWords = ({ words, unit }: PlotView['up']): string => (unit ? `${words}, ${unit}` : words);

function kindsOf(series: readonly Series[]): readonly string[] {
  let own = 0;
  return series.map(({ trial }) => (trial ? 'trial' : `s${own++}`));
}

function extent(
  series: readonly Series[],
  of: (point: PlotPoint) => readonly number[],
  fromZero: boolean,
  more: readonly number[] = [],
): [number, number] {
  const all = [...series.flatMap(({ points }) => points.flatMap(of)), ...more];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  return [fromZero ? Math.min(0, low) : low, high > low ? high : low + 1];
}

/** Side by side, and on a new row where there is no room. */
function flow(
  entries: readonly { readonly words: string; readonly width: number }[],
  room: number,
): readonly { readonly words: string; readonly row: number; readonly at: number }[] {
  let [row, at] = [0, 0];
  return entries.map(({ words, width: wide }) => {
    if (at > 0 && at + wide > room) [row, at] = [row + 1, 0];
    const placed = { words, row, at };
    at += wide + 8;
    return placed;
  });
}

interface PlacedMark {
  readonly mark: PlotView['marks'][number];
  readonly row: number;
  readonly at: number;
  readonly anchor: 'start' | 'end';
}

/** Words of marks in rows above the plot, each row free of overlaps. */
function rowsOfMarks(view: PlotView, x: (value: number) => number): readonly PlacedMark[] {
  const taken: (readonly [from: number, to: number])[][] = [];
  return view.marks.map((mark) => {
    const wide = mark.words.length * em * letter;
    const here = x(mark.x);
    // Beside its line where there is room, else as near as the edges allow.
    const before = here + wide > width - 4 && here - wide >= 0;
    const from = before ? Math.min(here + 3, width - 4) - wide : Math.max(4, Math.min(here - 3, width - 4 - wide));
    const to = from + wide;
    let row = taken.findIndex((spans) => spans.every(([a, b]) => to < a - 6 || from > b + 6));
    if (row < 0) row = taken.push([]) - 1;
    taken[row]!.push([from, to]);
    return { mark, row, at: before ? to : from, anchor: before ? 'end' : 'start' };
  });
}
