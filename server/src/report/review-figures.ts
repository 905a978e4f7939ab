/** The card's figures as a review compares them, and their differences in the units of the trade. Works out no figure. */
import type { Analysis } from '../analysis';
import type { Craft } from '../build/craft';
import type { FigureChange, PackFigures } from '../review/figures';
import { cardOf, figuresByName } from './card';
import type { CardFigure } from './card-figure';
import { figureText, scaledFigure, valueText } from './figure-text';

export const figuresOfCard = (craft: Craft, analysis: Analysis): readonly PackFigures<CardFigure>[] =>
  cardOf(craft, analysis).packs.map((pack) => ({
    pack: pack.pack,
    figures: new Map([...figuresByName(pack)].reverse()),
  }));

/** What a friend would ask after, in that order; the rest is in JSON. */
const asked: readonly string[] = [
  'weight-ready',
  'time-as-flown',
  'time-hovering',
  'thrust-to-weight',
  'hover-throttle',
  'hover-current',
  'full-current',
  'control-reach',
  'video-reach',
];

const place = ({ name }: FigureChange): number => asked.indexOf(name.slice(name.indexOf('/') + 1));

/** Of the pack that is flown first, then of the others. */
export const askedFigures = (figures: readonly FigureChange<CardFigure>[]): readonly FigureChange<CardFigure>[] =>
  figures
    .filter((change) => place(change) >= 0)
    .sort(
      (a, b) =>
        Number(a.name.includes('/')) - Number(b.name.includes('/')) ||
        (a.pack < b.pack ? -1 : a.pack > b.pack ? 1 : place(a) - place(b)),
    );

export interface FigureRow {
  readonly title: string;
  /** The pack, when it isn't the one flown. */
  readonly pack: string | undefined;
  readonly before: string;
  readonly after: string;
  /** `+12 g`; empty when one of the two isn't known. */
  readonly difference: string;
  readonly verdict: string;
}

/** Nothing when the difference is smaller than a digit. */
export function figureRow(change: FigureChange<CardFigure>): FigureRow | undefined {
  const { before, after, significant, name } = change;
  const known = after ?? before;
  if (!known) return undefined;
  const difference = before && after ? differenceText(before, after) : '';
  if (before && after && difference === '') return undefined;
  return {
    title: known.title,
    pack: name.includes('/') ? change.pack : undefined,
    before: before ? figureText(before) : 'not known',
    after: after ? figureText(after) : 'not known',
    difference,
    verdict: !before || !after ? '' : significant ? 'more than the ranges' : 'within the ranges',
  };
}

/** With the digits of the figure itself; empty when they show none. */
export function differenceText(before: CardFigure, after: CardFigure): string {
  const base = Math.abs(after.value) >= Math.abs(before.value) ? after : before;
  const scaled = scaledFigure(base);
  const factor = base.value === 0 ? 1 : scaled.value / base.value;
  const digits = /\.(\d+)/.exec(valueText(base))?.[1]?.length ?? 0;
  const text = Math.abs((after.value - before.value) * factor).toFixed(digits);
  if (Number(text) === 0) return '';
  return `${after.value > before.value ? '+' : '−'}${text}${scaled.unit ? ` ${scaled.unit}` : ''}`;
}
