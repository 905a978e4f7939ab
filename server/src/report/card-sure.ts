/** The card's answer to "how sure is this?": what was measured, what would narrow the figures, what lies outside the model's data. */
import type { Craft, Pack } from '../build/craft';
import type { CraftFigures } from '../physics';
import { type Measured, measuredOf } from '../plan/measured';
import type { CardGroup } from './card-figure';
import { measurementWords, noticeWords } from './figure-words';

export function sureGroup(craft: Craft, pack: Pack | undefined, figures: CraftFigures | undefined): CardGroup {
  const remarks = measuredWords(measuredOf(craft, pack));
  if (figures) {
    const time = figures.narrows.flightTime.map((one) => measurementWords(one.measure));
    const thrust = figures.narrows.thrust.map((one) => measurementWords(one.measure));
    if (time.length > 0) remarks.push(`Flight time gets surer if you ${time.join(' and ')}.`);
    if (thrust.length > 0) remarks.push(`Thrust gets surer if you ${thrust.join(' and ')}.`);
    remarks.push(...new Set(figures.notices.map(noticeWords)));
  }
  return { question: 'How sure is this?', figures: [], remarks };
}

function measuredWords(measured: readonly Measured[]): string[] {
  const words = (used: boolean): string[] =>
    measured.filter((one) => one.used === used).map(({ what, date }) => `${what}${date ? ` (${date})` : ''}`);
  const lines: string[] = [];
  if (words(true).length > 0) lines.push(`Measured and used: ${words(true).join(', ')}.`);
  if (words(false).length > 0) lines.push(`Measured but not used: ${words(false).join(', ')}.`);
  return lines;
}
