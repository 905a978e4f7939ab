/** What a change does to the figures of a craft: rows of chosen card figures. Data and its forms as text and JSON; the plot is drawn elsewhere. */
import { figures } from '../physics';
import type { Variation, Varied } from '../plan/vary';
import { type CardFigure, figuresByName, packCard } from './card';
import { figureAsJson } from './card-json';
import { wrapped } from './card-text';
import { rangeText, valueText } from './figure-text';
import { briefWhyNot } from './figure-words';

export interface VaryRow {
  readonly label: string;
  /** In the unit the builder wrote; absent for a part. */
  readonly value: number | undefined;
  readonly figures: ReadonlyMap<string, CardFigure>;
  /** Why there is no flight. */
  readonly trouble: string | undefined;
}

export interface VaryReport {
  readonly name: string;
  readonly pack: string;
  /** What is varied, in the file's words. */
  readonly field: string;
  /** As written behind the values; empty for parts. */
  readonly unit: string;
  readonly shown: readonly string[];
  readonly base: VaryRow;
  readonly rows: readonly VaryRow[];
  readonly remarks: readonly string[];
}

export const usualFigures = [
  'weight-ready',
  'thrust-to-weight',
  'time-hovering',
  'time-as-flown',
  'full-current',
] as const;

export interface VaryRequest {
  readonly field: string;
  readonly unit: string;
  /** Written value for one in the engine's unit. */
  readonly scale: number;
  readonly shown: readonly string[];
  readonly weightHeld: boolean;
  readonly packFollows: boolean;
}

export function varyReport(varied: Varied, request: VaryRequest): VaryReport {
  const { field, unit, scale, shown, weightHeld, packFollows } = request;
  const remarks: string[] = [];
  if (weightHeld) remarks.push('The weight is held at what it is now.');
  else if (packFollows) remarks.push("The pack's weight follows its capacity, at its own energy for a weight.");
  if (varied.logLeftOut) remarks.push('The logged flight is left out: it was flown with the parts as they are.');
  const { craft, pack } = varied.base;
  return {
    name: craft.said.name?.value ?? 'Unnamed craft',
    pack: pack.name,
    field,
    unit,
    shown,
    base: rowOf(varied.base, scale),
    rows: varied.rows.map((one) => rowOf(one, scale)),
    remarks,
  };
}

function rowOf(variation: Variation, scale: number): VaryRow {
  const made = variation.input && figures(variation.input);
  const all = figuresByName(packCard(variation.craft, variation.pack, { figures: made, weight: variation.weight }));
  const bad = made && (made.hover.ok ? made.asFlown : made.hover);
  return {
    label: variation.label,
    value: variation.value === undefined ? undefined : variation.value * scale,
    figures: all,
    trouble: made === undefined ? 'facts are missing' : bad && !bad.ok ? briefWhyNot(bad) : undefined,
  };
}

/** Names of figures that a table of this craft could show. */
export const figureNames = (report: Pick<VaryReport, 'base'>): readonly string[] =>
  [...report.base.figures.keys()].sort();

export const titleOf = (report: VaryReport, name: string): string =>
  [report.base, ...report.rows].map((row) => row.figures.get(name)?.title).find((title) => title !== undefined) ?? name;

export function varyAsText(report: VaryReport): string {
  const heads = ['', ...report.shown.map((name) => titleOf(report, name).replace(/, full pack$/, ''))];
  const cells = [report.base, ...report.rows].map((row) => [row.label, ...report.shown.map((name) => cell(row, name))]);
  const widths = heads.map((head, i) =>
    Math.max(
      i === 0 ? 0 : wordsOf(head)[0]!.length,
      ...cells.map((row) => row[i]!.length),
      ...wordsOf(head).map((one) => one.length),
    ),
  );
  const depth = Math.max(...heads.map((head) => wordsOf(head).length));
  const lines = [`${report.name} with the pack "${report.pack}": ${report.field}`, ''];
  for (let k = 0; k < depth; k++)
    lines.push(
      line(
        heads.map((head) => wordsOf(head)[k - depth + wordsOf(head).length] ?? ''),
        widths,
      ),
    );
  for (const row of cells) lines.push(line(row, widths));
  return `${[...lines, ...(report.remarks.length > 0 ? [''] : []), ...report.remarks.map((remark) => wrapped(remark))].join('\n')}\n`;
}

function cell(row: VaryRow, name: string): string {
  const figure = row.figures.get(name);
  if (!figure) return row.trouble ?? '-';
  const range = rangeText(figure);
  return range ? `${valueText(figure)} (${range})` : valueText(figure);
}

/** A head in lines of at most 16 characters. */
function wordsOf(head: string): string[] {
  const lines = [''];
  for (const word of head.split(' ')) {
    const last = lines[lines.length - 1]!;
    if (last && last.length + word.length > 15) lines.push(word);
    else lines[lines.length - 1] = last ? `${last} ${word}` : word;
  }
  return lines;
}

const line = (cells: readonly string[], widths: readonly number[]): string =>
  `  ${cells.map((text, i) => (i === 0 ? text.padEnd(widths[0]!) : text.padStart(widths[i]!))).join('  ')}`.trimEnd();

export function varyAsJson(report: VaryReport): unknown {
  const row = ({ label, value, figures, trouble }: VaryRow): unknown => ({
    label,
    value: value ?? null,
    trouble: trouble ?? null,
    figures: Object.fromEntries(
      report.shown.flatMap((name) => {
        const figure = figures.get(name);
        return figure ? [[name, figureAsJson(figure)]] : [];
      }),
    ),
  });
  const { name, pack, field, unit, base, rows, remarks } = report;
  return { name, pack, field, unit: unit || null, 'as-it-is': row(base), rows: rows.map(row), remarks };
}
