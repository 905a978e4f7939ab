/** The card as lines for a terminal. Lays out; computes nothing. */
import type { Card, CardFigure, PackCard } from './card';
import type { LevelTable } from './card-levels';
import { rangeText, valueText } from './figure-text';

/** What is not said is modelled, as the foot of the card tells. */
export const basisWords: Readonly<Record<CardFigure['basis'], string>> = {
  measured: 'measured',
  calibrated: 'from your measurements',
  modelled: '',
  said: 'from the parts',
  estimate: 'partly usual values',
};

export function cardAsText(card: Card): string {
  const lines = [`${card.name}${card.craft ? `, ${card.craft}` : ''}`, ''];
  const [first, ...others] = card.packs;
  if (first) lines.push(...packLines(first, others.length > 0), '');
  for (const pack of others) lines.push(...briefLines(pack), '');
  lines.push(wrapped(card.flown), '', checksLine(card), wrapped(card.caution));
  return `${lines.join('\n')}\n`;
}

function packLines(pack: PackCard, several: boolean): string[] {
  const lines = [several ? `With the pack "${pack.pack}": ${pack.headline}` : pack.headline];
  for (const group of pack.groups) {
    lines.push('', `  ${group.question}`);
    const width = Math.max(40, ...group.figures.map((figure) => figure.title.length));
    for (const figure of group.figures) lines.push(figureLine(figure, width));
    for (const remark of group.remarks) lines.push(wrapped(remark, '    '));
    if (group.question === 'How long does it fly?' && pack.levels) lines.push('', ...levelLines(pack.levels));
  }
  return lines;
}

/** Another pack: what it decides. Its whole card comes with `--pack`. */
function briefLines(pack: PackCard): string[] {
  const figures = pack.groups.flatMap((group) => group.figures).filter((figure) => figure.glance);
  const width = Math.max(40, ...figures.map((figure) => figure.title.length));
  return [`With the pack "${pack.pack}": ${pack.headline}`, ...figures.map((figure) => figureLine(figure, width))];
}

function figureLine(figure: CardFigure, width: number): string {
  const range = rangeText(figure);
  const basis = basisWords[figure.basis];
  return `    ${figure.title.padEnd(width)} ${valueText(figure).padStart(10)}${`   ${range ? `typically ${range}` : ''}`.padEnd(29)}${basis}`.trimEnd();
}

function levelLines(table: LevelTable): string[] {
  const cell = (text: string): string => text.padStart(12);
  const lines = [`  ${table.question}`, `    ${''.padEnd(28)}${table.columns.map(cell).join('')}`];
  for (const { title, cells } of table.rows)
    lines.push(`    ${title.padEnd(28)}${cells.map((figure) => cell(figure ? valueText(figure) : '-')).join('')}`);
  return lines;
}

export const checksLine = (card: Card): string => {
  const { ran, found, notChecked } = card.checks;
  return `${ran} checks compared something, ${found} found something, ${notChecked} could not run for want of a fact.`;
};

/** Breaks a sentence at 100 characters. */
export function wrapped(text: string, indent = ''): string {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.length + word.length > 100 && line.trim()) {
      lines.push(line.trimEnd());
      line = indent;
    }
    line += `${word} `;
  }
  lines.push(line.trimEnd());
  return lines.join('\n');
}
