/** Two pictures of bars: mass by part, and the rails with what is left on each. Lays out; computes nothing. */
import { scaleLinear } from 'd3-scale';
import type { MassBar } from '../view/mass-view';
import type { RailBar } from '../view/power-view';
import { linkedTo, type Picture } from './picture';
import { el, type Markup } from './svg';

const width = 420;
const em = 11.5;

export function massPicture(bars: readonly MassBar[], linked: boolean): Picture | undefined {
  if (bars.length === 0) return undefined;
  const [left, right, row] = [172, 58, 21];
  const x = scaleLinear([0, Math.max(...bars.map(({ high }) => high))], [left, width - right]);
  const body = bars.map((bar, i) => {
    const y = 6 + i * row;
    const middle = y + row / 2 - 1;
    return el(
      'g',
      linkedTo(bar.spot, `${cut(bar.words, 28)} ${bar.text}`, linked),
      el('rect', { class: 'fill', x: left, y: y + 3, width: Math.max(0.5, x(bar.value) - left), height: row - 8 }),
      bar.high - bar.low > 1e-6
        ? el('path', {
            class: 'whisker',
            d: `M${x(bar.low)} ${middle}H${x(bar.high)}m0 -3v6M${x(bar.low)} ${middle - 3}v6`,
          })
        : undefined,
      el('text', { x: left - 6, y: middle + 4, 'text-anchor': 'end' }, cut(bar.words, 28)),
      ' ',
      el('text', { x: x(bar.high) + 6, y: middle + 4 }, bar.text),
    );
  });
  body.push(el('text', { class: 'q', x: left, y: 20 + bars.length * row }, 'thin lines: the typical range'));
  return {
    id: 'mass',
    kind: 'bars',
    title: 'Mass by part',
    description: `Heaviest first: ${bars.map(({ words, text }) => `${words} ${text}`).join(', ')}. Lines tell the typical range.`,
    box: [0, 0, width, 26 + bars.length * row],
    em,
    unit: 'px',
    linked,
    body,
  };
}

export function railsPicture(bars: readonly RailBar[], linked: boolean): Picture | undefined {
  if (bars.length === 0) return undefined;
  const [left, right] = [4, 4];
  let top = 4;
  const body: Markup[] = [];
  const isOver = ({ limit, sum }: RailBar): boolean => limit !== undefined && sum > limit;
  if (bars.some(isOver))
    body.push(
      el(
        'defs',
        {},
        el(
          'pattern',
          { id: 'over-hatch', width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
          el('line', { class: 'hatch', x1: 0, y1: 0, x2: 0, y2: 6 }),
        ),
      ),
    );
  for (const bar of bars) {
    const x = scaleLinear([0, Math.max(bar.limit ?? 0, bar.sum, 1e-3)], [left, width - right]);
    const lines = wrapWords(
      bar.draws.length > 0 ? bar.draws.map(({ words }) => words) : ['feeds nothing'],
      (width - 8) / (em * 0.54),
    );
    body.push(
      el(
        'g',
        linkedTo(bar.spot, `${bar.rail} ${bar.text}`, linked),
        el('text', { class: 'strong', x: left, y: top + 12 }, bar.rail),
        ' ',
        el(
          'text',
          { class: isOver(bar) ? 'bad-text strong' : undefined, x: width - right, y: top + 12, 'text-anchor': 'end' },
          bar.text,
        ),
        bar.limit === undefined
          ? undefined
          : el('rect', { class: 'room', x: left, y: top + 18, width: x(bar.limit) - left, height: 16 }),
      ),
    );
    let from = 0;
    for (const [i, draw] of bar.draws.entries()) {
      body.push(
        el(
          'g',
          linkedTo(draw.spot, `${bar.rail} feeds ${draw.words}`, linked),
          el('rect', {
            class: i % 2 === 0 ? 'fill cut' : 'fill odd cut',
            x: x(from),
            y: top + 18,
            width: x(from + draw.current) - x(from),
            height: 16,
          }),
        ),
      );
      from += draw.current;
    }
    if (bar.limit !== undefined && bar.sum > bar.limit)
      body.push(
        el('rect', { class: 'over', x: x(bar.limit), y: top + 18, width: x(bar.sum) - x(bar.limit), height: 16 }),
      );
    for (const [i, line] of lines.entries()) body.push(el('text', { class: 'q', x: left, y: top + 48 + i * 15 }, line));
    top += 46 + lines.length * 15;
  }
  return {
    id: 'rails',
    kind: 'bars',
    title: 'Rails of the flight controller',
    description: `${bars.map(({ rail, text, draws }) => `${rail}: ${text}; feeds ${draws.map(({ words }) => words).join(', ') || 'nothing'}`).join('. ')}.`,
    box: [0, 0, width, top],
    em,
    unit: 'px',
    linked,
    body,
  };
}

export const cut = (words: string, most: number): string =>
  words.length > most ? `${words.slice(0, most - 1)}…` : words;

export function wrapWords(pieces: readonly string[], most: number, between = ','): readonly string[] {
  const lines: string[] = [];
  for (const [i, piece] of pieces.entries()) {
    const words = i < pieces.length - 1 ? `${piece}${between}` : piece;
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + words.length <= most) lines[lines.length - 1] = `${last} ${words}`;
    else lines.push(words);
  }
  return lines;
}
