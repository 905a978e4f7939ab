/** The card as lines for a terminal, and as Markdown for hovers and comments. Lays out; computes nothing. */
import type { Card, CardFigure, PackCard } from './card';
import { figureText, rangeText, valueText } from './figure-text';

const basisWords: Readonly<Record<CardFigure['basis'], string>> = {
  measured: 'measured',
  calibrated: 'from your measurements',
  modelled: 'modelled',
  said: 'from the parts',
  estimate: 'partly usual weights',
};

export function cardAsText(card: Card): string {
  const lines = [`${card.name}${card.craft ? `, ${card.craft}` : ''}`, ''];
  for (const pack of card.packs) lines.push(...packLines(pack, card.packs.length > 1), '');
  lines.push(wrap(card.flown), '', checksLine(card), card.caution);
  return `${lines.join('\n')}\n`;
}

function packLines(pack: PackCard, several: boolean): string[] {
  const lines = several ? [`With the pack "${pack.pack}"`] : [];
  for (const group of pack.groups) {
    lines.push(`  ${group.question}`);
    for (const figure of group.figures) {
      const range = rangeText(figure);
      lines.push(
        `    ${figure.title.padEnd(44)} ${valueText(figure).padStart(9)}${range ? `   typically ${range}` : ''}   ${basisWords[figure.basis]}`,
      );
    }
    for (const remark of group.remarks) lines.push(wrap(remark, '    '));
  }
  return lines;
}

export const checksLine = (card: Card): string => {
  const { ran, found, notChecked } = card.checks;
  return `${ran} checks compared something, ${found} found something, ${notChecked} could not run for want of a fact.`;
};

function wrap(text: string, indent = ''): string {
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

/** The whole card; `short` leaves out all but the decisive line of each group, for hovers. */
export function cardAsMarkdown(card: Card): string {
  const parts = [`### ${escapeMarkdown(card.name)}${card.craft ? ` · ${escapeMarkdown(card.craft)}` : ''}`];
  for (const pack of card.packs) {
    if (card.packs.length > 1) parts.push(`**With the pack ${escapeMarkdown(pack.pack)}**`);
    for (const group of pack.groups) {
      const figures = group.figures.map(
        (figure) => `- ${figure.title}: **${valueText(figure)}**${rangeText(figure) ? ` (${rangeText(figure)})` : ''}`,
      );
      const remarks = group.remarks.map((remark) => `- ${remark}`);
      parts.push(`**${group.question}**\n\n${[...figures, ...remarks].join('\n')}`);
    }
  }
  parts.push(card.flown, `${checksLine(card)} ${card.caution}`);
  return `${parts.join('\n\n')}\n`;
}

export const escapeMarkdown = (text: string): string =>
  text.replace(/[\\`*_{}[\]()#+\-.!|<>~]/g, '\\$&').replace(/[\r\n]+/g, ' ');

export function cardAsJson(card: Card): unknown {
  const figures = (pack: PackCard): Record<string, unknown> =>
    Object.fromEntries(
      pack.groups.flatMap((group) =>
        group.figures.map(({ name, value, low, high, unit, basis }) => [name, { value, low, high, unit, basis }]),
      ),
    );
  return {
    name: card.name,
    craft: card.craft ?? null,
    packs: Object.fromEntries(
      card.packs.map((pack) => [
        pack.pack || 'none',
        { figures: figures(pack), remarks: pack.groups.flatMap((group) => group.remarks) },
      ]),
    ),
    flown: card.flown,
    checks: card.checks,
  };
}

export { figureText };
