/** The card as Markdown: whole for comments and documents, and at a glance for the editor's small hover. Lays out; computes nothing. */
import type { Card, CardFigure, PackCard } from './card';
import { checksLine } from './card-text';
import { rangeText, valueText } from './figure-text';

export const escapeMarkdown = (text: string): string =>
  text.replace(/[\\`*_{}[\]()#+\-.!|<>~]/g, '\\$&').replace(/[\r\n]+/g, ' ');

const title = (card: Card): string =>
  `### ${escapeMarkdown(card.name)}${card.craft ? ` · ${escapeMarkdown(card.craft)}` : ''}`;

const bold = (figure: CardFigure): string =>
  `**${valueText(figure)}**${rangeText(figure) ? ` (${rangeText(figure)})` : ''}`;

export function cardAsMarkdown(card: Card): string {
  const parts = [title(card)];
  for (const pack of card.packs) {
    if (card.packs.length > 1) parts.push(`#### With the pack ${escapeMarkdown(pack.pack)}`);
    parts.push(`**${pack.headline}**`);
    for (const group of pack.groups) {
      const figures = group.figures.map((figure) => `- ${figure.title}: ${bold(figure)}`);
      parts.push(
        `**${group.question}**\n\n${[...figures, ...group.remarks.map((remark) => `- ${remark}`)].join('\n')}`,
      );
    }
    if (pack.levels) parts.push(levelsAsMarkdown(pack));
  }
  parts.push(card.flown, `${checksLine(card)} ${card.caution}`);
  return `${parts.join('\n\n')}\n`;
}

function levelsAsMarkdown({ levels }: PackCard): string {
  const { question, columns, rows } = levels!;
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const body = rows.map((row) => line([row.title, ...row.cells.map((figure) => (figure ? valueText(figure) : ''))]));
  return `**${question}**\n\n${[line(['', ...columns]), line(['---', ...columns.map(() => '--:')]), ...body].join('\n')}`;
}

/** What fits into a hover: the decisive line, then one line for a question, then what would make it surer. */
export function cardAtAGlance(card: Card): string {
  const [first, ...others] = card.packs;
  const parts = [title(card)];
  if (first) {
    parts.push(`**${first.headline}**`);
    // What it weighs comes first: it is the shortest line, and the headline starts with it.
    const groups = [...first.groups].sort((a, b) => Number(b.word === 'weighs') - Number(a.word === 'weighs'));
    const lines = groups.flatMap((group) => {
      const shown = group.figures.filter((figure) => figure.glance);
      return shown.length > 0
        ? [
            `- ${group.word ? `${group.word}: ` : ''}${shown.map((figure) => `${figure.title} ${bold(figure)}`).join(' · ')}`,
          ]
        : [];
    });
    // Where there is no figure, the reason is what matters.
    if (lines.length === 0) lines.push(...(first.groups[0]?.remarks ?? []).map((remark) => `- ${remark}`));
    if (lines.length > 0) parts.push(lines.join('\n'));
    const surer = first.groups
      .flatMap((group) => group.remarks)
      .find((remark) => remark.startsWith('Flight time gets surer'));
    if (surer) parts.push(surer);
  }
  if (others.length > 0)
    parts.push(others.map((pack) => `- with ${escapeMarkdown(pack.pack)}: ${pack.headline}`).join('\n'));
  parts.push(checksLine(card));
  return `${parts.join('\n\n')}\n`;
}
