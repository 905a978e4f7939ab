/** Thrust, current and efficiency over throttle, with the hover point. Lays out what the physics and the card say. */
import { type ThrottlePoint, throttleCurve } from '../../../physics';
import type { CardFigure } from '../../card-figure';
import { cardFigure } from '../../card-figure';
import { figureText, scaledFigure, valueText } from '../../figure-text';
import type { Flown } from './flown';
import type { Mark, PlotView, Series } from './plot-view';
import type { Spots } from './spots';

const throttles = Array.from({ length: 10 }, (_, i) => (i + 1) / 10);

const quantities = [
  { id: 'thrust', key: 'thrust', title: 'Thrust of all motors over throttle', words: 'thrust', name: 'full-thrust' },
  {
    id: 'current',
    key: 'current',
    title: 'Current out of the pack over throttle',
    words: 'current',
    name: 'full-current',
  },
  {
    id: 'efficiency',
    key: 'efficiency',
    title: 'Thrust for its power over throttle',
    words: 'thrust for its power',
    name: undefined,
  },
] as const;

export function flyPlots(base: Flown, trial: Flown | undefined, spots: Spots): readonly PlotView[] {
  const curves = [base, ...(trial ? [trial] : [])].map((flown) => ({
    flown,
    points: flown.input ? throttleCurve(flown.input, throttles) : [],
  }));
  if (curves[0]!.points.length < 2) return [];
  return quantities.map(({ id, key, title, words, name }): PlotView => {
    const of = (point: ThrottlePoint): CardFigure => cardFigure(key, words, point[key]);
    const unit = scaledFigure(of(curves[0]!.points[0]!)).unit;
    const series = curves.map(
      ({ flown, points }): Series => ({
        words: flown.label ? `with ${flown.label}` : 'at half of the charge',
        trial: flown.label !== undefined,
        points: points.map((point) => {
          const { value, low, high } = scaledFigure(of(point));
          return { x: point.throttle * 100, y: value, low, high };
        }),
      }),
    );
    const marks = curves.flatMap(({ flown }) => marksOf(flown, key, name, spots));
    return {
      id,
      title,
      description: `${title}, with the range that holds about four of five real craft. ${marks.map((mark) => mark.words).join('; ')}.`,
      across: { words: 'throttle', unit: '%', fromZero: true },
      up: { words, unit, fromZero: true },
      series,
      marks,
      limits: [],
      table: {
        heads: ['throttle', ...curves.map(({ flown }) => (flown.label ? `with ${flown.label}` : words))],
        rows: throttles.map((throttle) => [
          `${Math.round(throttle * 100)} %`,
          ...curves.map(({ points }) => {
            const point = points.find((one) => one.throttle === throttle);
            return point ? figureText(of(point)) : 'cannot be';
          }),
        ]),
      },
    };
  });
}

/** The hover as the card has it, and full throttle on a full pack. */
function marksOf(
  { figures, craft, label }: Flown,
  key: 'thrust' | 'current' | 'efficiency',
  full: string | undefined,
  spots: Spots,
): readonly Mark[] {
  const marks: Mark[] = [];
  if (figures?.hover.ok) {
    const { throttle, thrust, packCurrent, gramsPerWatt } = figures.hover.value;
    const figure = cardFigure('hover', '', { thrust, current: packCurrent, efficiency: gramsPerWatt }[key]);
    const at = cardFigure('hover-throttle', '', throttle);
    marks.push({
      x: scaledFigure(at).value,
      dots: [scaledFigure(figure).value],
      words: `${label ? `${label}: ` : ''}hovers at ${valueText(at)}, ${valueText(figure)}`,
      trial: label !== undefined,
      spot: spots.spot(craft.roles.motors?.kv, 'parts.motors'),
    });
  }
  if (full !== undefined && figures?.full.ok && !label) {
    const { thrust, packCurrent } = figures.full.value;
    const figure = cardFigure(full, '', key === 'thrust' ? thrust : packCurrent);
    marks.push({
      x: 100,
      dots: [scaledFigure(figure).value],
      words: `full pack: ${valueText(figure)}`,
      trial: false,
      spot: spots.spot(craft.roles.motors?.kv, 'parts.motors'),
    });
  }
  return marks;
}
