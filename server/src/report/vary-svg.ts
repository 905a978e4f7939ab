/** Draws what a change does to the figures as one SVG: a panel a figure, its typical range as a band. Plain shapes and text; computes no figure. */
import type { CardFigure } from './card';
import { scaledFigure } from './figure-text';
import { titleOf, type VaryReport, type VaryRow } from './vary-report';

const WIDTH = 720;
const LEFT = 64;
const RIGHT = 40;
const TOP = 82;
const PANEL = 118;
const GAP = 38;
const INNER = WIDTH - LEFT - RIGHT;

const style = `text{font:12px system-ui,sans-serif;fill:#2b3138}.h{font-size:15px;font-weight:600}.n{font-weight:600}.q{fill:#6b7580}
.g{stroke:#d9dde0;stroke-width:1}.b{fill:#c4692a;fill-opacity:.2}.l{fill:none;stroke:#a24d12;stroke-width:2}.p{fill:#a24d12}.e{stroke:#c4692a;stroke-width:6;stroke-opacity:.3}.o{stroke:#2b3138;stroke-dasharray:3 3}.w{fill:#fdfcfa}
@media(prefers-color-scheme:dark){text{fill:#e4e2dd}.q{fill:#9aa2a9}.g{stroke:#3a4046}.o{stroke:#e4e2dd}.w{fill:#1c1f22}.l{stroke:#f0a060}.p{fill:#f0a060}}`;

export function varyAsSvg(report: VaryReport): string {
  const panels = report.shown.filter((name) => report.rows.some((row) => row.figures.has(name)));
  const height = TOP + panels.length * (PANEL + GAP) + 20;
  const across = acrossOf(report);
  const body = panels.map((name, i) => panel(report, name, TOP + i * (PANEL + GAP), across));
  const x = across.ticks.map(
    ([at, label]) => `<text class="q" x="${n(at)}" y="${height - 14}" text-anchor="middle">${safe(label)}</text>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${safe(`${report.name}: what ${report.field} changes`)}">
<style>${style}</style>
<rect class="w" width="${WIDTH}" height="${height}" rx="6"/>
<text class="h" x="${LEFT}" y="26">${safe(`${report.name}: what ${report.field} changes`)}</text>
<text class="q" x="${LEFT}" y="44">${safe(`Pack "${report.pack}". Bands hold about four of five real craft.${across.here === undefined ? '' : ' Dashed: as it is.'}`)}</text>
${body.join('\n')}
${x.join('\n')}
</svg>
`;
}

interface Across {
  /** Place of each row; rows of parts stand side by side. */
  readonly at: readonly number[];
  readonly ticks: readonly (readonly [at: number, label: string])[];
  /** Where the craft as it is would stand. */
  readonly here: number | undefined;
  readonly continuous: boolean;
}

function acrossOf(report: VaryReport): Across {
  const values = report.rows.map((row) => row.value);
  const numbers = values.filter((value): value is number => value !== undefined);
  if (numbers.length === values.length && new Set(numbers).size > 1) {
    const [low, high] = [Math.min(...numbers), Math.max(...numbers)];
    const place = (value: number): number => LEFT + ((value - low) / (high - low)) * INNER;
    const own = Number.isFinite(Number(report.base.value)) ? report.base.value! : undefined;
    const ticks = niceTicks(low, high, 7).map(
      (value) => [place(value), `${round(value)}${report.unit ? ` ${report.unit}` : ''}`] as const,
    );
    return {
      at: numbers.map(place),
      ticks,
      here: own !== undefined && own >= low && own <= high ? place(own) : undefined,
      continuous: true,
    };
  }
  const at = report.rows.map((_, i) => LEFT + ((i + 0.5) / report.rows.length) * INNER);
  return { at, ticks: report.rows.map((row, i) => [at[i]!, row.label] as const), here: undefined, continuous: false };
}

function panel(report: VaryReport, name: string, top: number, across: Across): string {
  const scaled = (row: VaryRow): ReturnType<typeof scaledFigure> | undefined => {
    const figure: CardFigure | undefined = row.figures.get(name);
    return figure && scaledFigure(figure);
  };
  const points = report.rows.map(scaled);
  const known = points.filter((point) => point !== undefined);
  const [low, high] = [Math.min(...known.map((p) => p.low)), Math.max(...known.map((p) => p.high))];
  const pad = Math.max((high - low) * 0.06, Math.abs(high) * 1e-3, 1e-9);
  const [floor, ceiling] = [Math.max(low - pad, low >= 0 ? 0 : -Infinity), high + pad];
  const y = (value: number): number => top + PANEL - ((value - floor) / (ceiling - floor)) * PANEL;
  const unit = known[0]?.unit ?? '';
  const parts = [
    `<text class="n" x="${LEFT}" y="${top - 8}">${safe(`${titleOf(report, name)}${unit ? `, ${unit}` : ''}`)}</text>`,
  ];
  for (const tick of niceTicks(floor, ceiling, 6)) {
    parts.push(`<line class="g" x1="${LEFT}" y1="${n(y(tick))}" x2="${WIDTH - RIGHT}" y2="${n(y(tick))}"/>`);
    parts.push(`<text class="q" x="${LEFT - 8}" y="${n(y(tick) + 4)}" text-anchor="end">${round(tick)}</text>`);
  }
  if (across.here !== undefined)
    parts.push(`<line class="o" x1="${n(across.here)}" y1="${top}" x2="${n(across.here)}" y2="${top + PANEL}"/>`);
  const drawn = points.flatMap((point, i) => (point ? [{ x: across.at[i]!, ...point }] : []));
  if (across.continuous) {
    const edge = (key: 'low' | 'high'): string[] => drawn.map((p) => `${n(p.x)},${n(y(p[key]))}`);
    parts.push(`<polygon class="b" points="${[...edge('high'), ...edge('low').reverse()].join(' ')}"/>`);
    parts.push(`<polyline class="l" points="${drawn.map((p) => `${n(p.x)},${n(y(p.value))}`).join(' ')}"/>`);
  } else
    for (const p of drawn)
      parts.push(`<line class="e" x1="${n(p.x)}" y1="${n(y(p.low))}" x2="${n(p.x)}" y2="${n(y(p.high))}"/>`);
  for (const p of drawn) parts.push(`<circle class="p" cx="${n(p.x)}" cy="${n(y(p.value))}" r="3"/>`);
  return parts.join('\n');
}

/** Round numbers inside, about as many as wanted. */
export function niceTicks(low: number, high: number, wanted: number): readonly number[] {
  const rough = (high - low) / wanted;
  if (!(rough > 0) || !Number.isFinite(rough)) return [low];
  const decade = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((lead) => lead * decade).find((size) => size >= rough) ?? 10 * decade;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first;
  return Array.from({ length: Math.min(50, count + 1) }, (_, i) => (first + i) * step);
}

const n = (value: number): string => value.toFixed(1).replace(/\.0$/, '');
const round = (value: number): string => `${Number(value.toPrecision(6))}`;
const safe = (text: string): string =>
  text.replace(/[&<>"]/g, (char) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[char]!);
