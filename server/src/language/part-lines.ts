/** The figures that one part decides, as lines of Markdown: what it weighs in the craft and what depends on choosing it. */
import type { Craft, Pack } from '../build/craft';
import { weightOf } from '../plan/weight';
import { type Card, type CardFigure, figuresByName } from '../report/card';
import { figureText } from '../report/figure-text';
import { own } from '../text/own';

/** Names of card figures by role; a role that is not here decides only weight. */
const decides: Readonly<Record<string, readonly string[]>> = {
  motors: ['thrust-to-weight', 'hover-throttle', 'full-current-each', 'time-as-flown'],
  propellers: ['thrust-to-weight', 'hover-throttle', 'full-current-each', 'full-tip-mach', 'time-as-flown'],
  esc: ['full-current-each', 'full-current'],
  stack: ['full-current-each', 'full-current'],
  'all-in-one': ['full-current-each', 'full-current'],
  'battery-lead': ['full-current', 'mean-current'],
  frame: ['thrust-to-weight', 'time-as-flown'],
  'action-camera': ['thrust-to-weight', 'time-as-flown'],
  packs: ['time-as-flown', 'time-hovering', 'thrust-to-weight', 'full-current', 'landing-cell-voltage', 'charge-used'],
};

export function partLines(craft: Craft, card: Card, role: string, pack: Pack | undefined): readonly string[] {
  const weight = weightOf(craft, pack);
  const row = role === 'packs' ? weight.packRow : weight.rows.find((one) => one.part === role);
  const lines: string[] = [];
  if (row && weight.ready.value > 0) {
    const each = row.count > 1 ? ` (${row.count} of ${grams(row.mass.value / row.count)})` : '';
    const basis = row.basis === 'estimate' ? ', a usual weight; weigh it' : row.basis === 'weighed' ? ', weighed' : '';
    lines.push(
      `- weight: **${grams(row.mass.value)}**${each}, ${Math.round((row.mass.value / weight.ready.value) * 100)} % of ${grams(weight.ready.value)} ready to fly${basis}`,
    );
  }
  const shown = card.packs.find((one) => one.pack === pack?.name) ?? card.packs[0];
  const figures = shown && figuresByName(shown);
  for (const name of own(decides, role) ?? []) {
    const figure = figures?.get(name);
    if (figure) lines.push(line(figure));
  }
  return lines;
}

const line = (figure: CardFigure): string =>
  `- ${figure.title}: **${figureText(figure).replace(' (', '** (')}${figureText(figure).includes(' (') ? '' : '**'}`;

const grams = (kilograms: number): string => `${(kilograms * 1000).toFixed(kilograms < 0.1 ? 1 : 0)} g`;
