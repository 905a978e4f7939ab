/** Draws the figures of a review before and after as one small SVG: ranges as bars, a row a figure. Plain shapes and text; computes no figure. */

import type { CardFigure } from './card-figure';
import { scaledFigure, valueText } from './figure-text';
import { cut, htmlWords } from './markdown-safe';
import { askedFigures, differenceText } from './review-figures';
import type { ReviewShown } from './review-shown';

type Build = ReviewShown['review']['builds'][number];

const WIDTH = 680;
const LEFT = 210;
const RIGHT = 150;
const ROW = 34;
const MOST_BUILDS = 4;
const MOST_FIGURES = 5;

const style = `text{font:12px system-ui,sans-serif;fill:#2b3138}.h{font-size:14px;font-weight:600}.q{fill:#6b7580}
.b{stroke:#8a949c;stroke-width:7;stroke-opacity:.45}.a{stroke:#c4692a;stroke-width:7;stroke-opacity:.45}.pb{fill:#5d6870}.pa{fill:#a24d12}.w{fill:#fdfcfa}
@media(prefers-color-scheme:dark){text{fill:#e4e2dd}.q{fill:#9aa2a9}.w{fill:#1c1f22}.pb{fill:#b9c1c7}.pa{fill:#f0a060}}`;

export function reviewAsSvg({ review, base, head }: ReviewShown): string {
  const builds = (review.builds as readonly Build[]).filter((build) => rowsOf(build).length > 0).slice(0, MOST_BUILDS);
  let y = 50;
  const body: string[] = [];
  for (const build of builds) {
    y += 22;
    body.push(`<text class="h" x="16" y="${y}">${htmlWords(cut(build.name || 'Unnamed craft', 60))}</text>`);
    y += 12;
    for (const { title, before, after } of rowsOf(build)) {
      body.push(row(title, before, after, y));
      y += ROW;
    }
  }
  if (builds.length === 0) {
    y += 22;
    body.push(`<text class="q" x="16" y="${y}">No figure differs.</text>`);
  }
  const label = htmlWords(`Figures before and after, ${cut(base, 60)} to ${cut(head, 60)}`);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${y + 16}" viewBox="0 0 ${WIDTH} ${y + 16}" role="img" aria-label="${label}">
<style>${style}</style>
<rect class="w" width="${WIDTH}" height="${y + 16}" rx="6"/>
<text class="h" x="16" y="26">${label}</text>
<text class="q" x="16" y="44">Above grey: before. Below, coloured: after. Bars hold about four of five real craft.</text>
${body.join('\n')}
</svg>
`;
}

interface Row {
  readonly title: string;
  readonly before: CardFigure;
  readonly after: CardFigure;
}

const rowsOf = (build: Build): readonly Row[] =>
  askedFigures(build.figures)
    .filter((change) => !change.name.includes('/'))
    .flatMap(({ before, after }) =>
      before && after && differenceText(before, after) !== '' ? [{ title: after.title, before, after }] : [],
    )
    .slice(0, MOST_FIGURES);

function row(title: string, before: CardFigure, after: CardFigure, top: number): string {
  const factor = scaledFigure(after).value / (after.value || 1) || 1;
  const low = Math.min(before.low, after.low) * factor;
  const high = Math.max(before.high, after.high) * factor;
  const pad = Math.max((high - low) * 0.05, Math.abs(high) * 1e-3, 1e-9);
  const x = (value: number): string =>
    (LEFT + ((value * factor - low + pad) / (high - low + 2 * pad)) * (WIDTH - LEFT - RIGHT)).toFixed(1);
  const bar = (figure: CardFigure, kind: 'a' | 'b', y: number): string =>
    `<line class="${kind}" x1="${x(figure.low)}" y1="${y}" x2="${x(figure.high)}" y2="${y}"/><circle class="p${kind}" cx="${x(figure.value)}" cy="${y}" r="3.5"/>`;
  return [
    `<text x="16" y="${top + 17}">${htmlWords(cut(title, 34))}</text>`,
    bar(before, 'b', top + 9),
    bar(after, 'a', top + 19),
    `<text x="${WIDTH - RIGHT + 12}" y="${top + 11}" class="q">${htmlWords(valueText(before))}</text>`,
    `<text x="${WIDTH - RIGHT + 12}" y="${top + 25}">${htmlWords(`${valueText(after)} (${differenceText(before, after)})`)}</text>`,
  ].join('\n');
}
