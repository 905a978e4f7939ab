/** A review for a terminal: build by build what was swapped, the figures, the findings. Lays out; compares nothing. */
import type { Finding } from '../build/finding';
import type { BuildReview, FileReview } from '../review/review';
import { positionAt } from '../text/lines';
import { cut, visible } from './markdown-safe';
import { askedFigures, figureRow } from './review-figures';
import { type ReviewShown, whereIn } from './review-shown';
import {
  changeWords,
  partsWords,
  plural,
  priceSentence,
  type Sentence,
  type SwapWords,
  severityWords,
  statusSentence,
  summaryWords,
  swapWords,
} from './review-words';

export function reviewAsText(shown: ReviewShown): string {
  const { review, base, head, notes } = shown;
  const blocks = [`${visible(base)} → ${visible(head)}\n${summaryWords(review.builds, review.files)}`];
  for (const build of review.builds) blocks.push(buildBlock(build, shown).join('\n'));
  for (const file of review.files) blocks.push(fileBlock(file, shown).join('\n'));
  if (notes.length > 0) blocks.push(notes.map(visible).join('\n'));
  return `${blocks.join('\n\n')}\n`;
}

const words = (sentence: Sentence): string =>
  sentence.map((piece) => (typeof piece === 'string' ? piece : cut(visible(piece.said)))).join('');

const swapLines = ({ line, fields }: SwapWords): string[] => [
  `  ${words(line)}`,
  ...fields.map((field) => `    ${words(field)}`),
];

function buildBlock(build: BuildReview, shown: ReviewShown): string[] {
  const name = build.name ? ` · ${cut(visible(build.name), 80)}` : '';
  const lines = [
    `${visible(shown.name(build.file))}${name}: ${words(statusSentence(build, shown.name))}`,
    ...(build.status === 'added' || build.status === 'deleted'
      ? []
      : build.swaps.flatMap((swap) => swapLines(swapWords(swap)))),
  ];
  if (build.status !== 'deleted') lines.push(...figureLines(build as ReviewShown['review']['builds'][number]));
  if (build.price && build.status !== 'deleted') lines.push(`  ${words(priceSentence(build.price))}`);
  return [...lines, ...findingLines(build, shown)];
}

/** A new build has nothing to compare with: its figures as they are. */
function figureLines(build: ReviewShown['review']['builds'][number]): string[] {
  const all = askedFigures(build.figures);
  const flown = all.filter(({ name }) => !name.includes('/'));
  return (flown.length > 0 ? flown : all).flatMap((change) => {
    const row = figureRow(change);
    if (!row) return [];
    const title = row.pack === undefined ? row.title : `${row.title} with ${visible(row.pack)}`;
    if (build.status === 'added') return [`  ${title}: ${row.after}`];
    const verdict = row.difference ? `: ${row.difference}, ${row.verdict}` : '';
    return [`  ${title}: ${row.before} → ${row.after}${verdict}`];
  });
}

function fileBlock(file: FileReview, shown: ReviewShown): string[] {
  const users = (id: string): number =>
    shown.review.builds.filter((build) => build.draws.has(`${file.file} ${id}`)).length;
  const lines = [`${visible(shown.name(file.file))}: ${words(statusSentence(file, shown.name))}`];
  for (const part of partsWords(file, shown.name, users)) lines.push(...swapLines(part));
  for (const change of file.changes) lines.push(`  ${words(changeWords(change))}`);
  return [...lines, ...findingLines(file, shown)];
}

function findingLines({ findings }: BuildReview | FileReview, shown: ReviewShown): string[] {
  const { introduced, resolved, remaining, accepted } = findings;
  const lines: string[] = [];
  const where = whereIn(shown, shown.review.sides.after);
  const line = (finding: Finding): number => {
    const file = where.file(finding.at.file);
    return file ? positionAt(file.lines, finding.at.span.start).line + 1 : 1;
  };
  for (const { finding, was } of introduced) {
    const how = was === undefined ? 'new' : was === 'accepted' ? 'no longer accepted' : 'graver now';
    lines.push(`  ${how}: ${severityWords[finding.severity]}, ${finding.check}, line ${line(finding)}`);
    lines.push(...indented(finding.message));
  }
  for (const finding of resolved) {
    lines.push(`  gone: ${severityWords[finding.severity]}, ${finding.check}`);
    lines.push(...indented(finding.message));
  }
  for (const { finding, fresh } of accepted) {
    lines.push(
      `  ${fresh ? 'new and accepted' : 'accepted now'}: ${severityWords[finding.severity]}, ${finding.check}, line ${line(finding)}`,
    );
    lines.push(...indented(finding.message), ...indented(`Because: ${finding.accepted}`));
  }
  if (remaining.length > 0) lines.push(`  still there: ${plural(remaining.length, 'finding')}`);
  return lines;
}

function indented(text: string): string[] {
  const lines: string[] = [];
  let line = '     ';
  for (const word of cut(visible(text), 1500).split(' ')) {
    if (line.length + word.length > 104) {
      lines.push(line);
      line = '     ';
    }
    line += ` ${word}`;
  }
  return [...lines, line];
}
