/** A review as a comment on a pull request: the summary and what is new first, each build folded below. Everything from a file is made harmless. */
import type { BuildReview, FileReview } from '../review/review';
import { findingItem, folded, joined } from './markdown-findings';
import { cut, htmlInComment, markdownCode, markdownSentence, markdownWords } from './markdown-safe';
import { askedFigures, differenceText, figureRow } from './review-figures';
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

type Build = ReviewShown['review']['builds'][number];

/** By which a workflow finds its own earlier comment. */
const MARK = '<!-- dryfit review -->';

const SHOWN_OPEN = 10;

/** @param picture address of the figures drawn, when they are */
export function reviewAsMarkdown(shown: ReviewShown, picture?: string): string {
  const { review, base, head, notes } = shown;
  const builds = review.builds as readonly Build[];
  const parts = [
    MARK,
    `### Dryfit: ${markdownWords(summaryWords(builds, review.files))}`,
    `Compared ${markdownCode(cut(base, 80))} with ${markdownCode(cut(head, 80))}. Figures are predictions with typical ranges.`,
  ];
  const news = newItems(shown);
  if (news.length > 0) parts.push(`**New with this change**\n\n${news.join('\n')}`);
  const lines = builds.slice(0, SHOWN_OPEN).map((build) => buildLine(build, shown));
  if (builds.length > SHOWN_OPEN) lines.push(`- and ${plural(builds.length - SHOWN_OPEN, 'more build')}`);
  if (lines.length > 0) parts.push(lines.join('\n'));
  if (picture !== undefined) parts.push(`![Figures before and after](<${encodeURI(picture).replace(/[<>]/g, '')}>)`);
  if (notes.length > 0) parts.push(notes.map(markdownSentence).join('\n\n'));
  const blocks = [
    ...builds.filter(({ status }) => status !== 'formatting').map((build) => buildBlock(build, shown)),
    ...review.files.filter(({ status }) => status !== 'formatting').map((file) => fileBlock(file, shown)),
  ];
  return `${joined(parts.join('\n\n'), blocks, 'file')}\n`;
}

const words = (sentence: Sentence): string =>
  sentence.map((piece) => (typeof piece === 'string' ? markdownWords(piece) : markdownCode(cut(piece.said)))).join('');

function newItems(shown: ReviewShown): string[] {
  const where = whereIn(shown, shown.review.sides.after);
  const all = [...shown.review.builds, ...shown.review.files].flatMap(({ findings }) => [
    ...findings.introduced,
    ...findings.accepted.filter(({ finding, fresh }) => fresh && finding.danger),
  ]);
  const grave = all.filter(({ finding }) => finding.severity !== 'information');
  const items = grave
    .slice(0, SHOWN_OPEN)
    .map(({ finding }) => findingItem(finding, where, `${markdownCode(shown.name(finding.at.file))} `));
  if (grave.length > SHOWN_OPEN) items.push(`- and ${grave.length - SHOWN_OPEN} more below`);
  return items;
}

/** One build in one line: what a friend would say first. */
function buildLine(build: Build, { name }: ReviewShown): string {
  const facts: string[] = [words(statusSentence(build, name))];
  if (build.status !== 'added' && build.status !== 'deleted') {
    const swapped = build.swaps.filter(({ head }) => head !== '');
    facts.push(...swapped.slice(0, 3).map((swap) => words(swapWords(swap).line)));
    if (swapped.length > 3) facts.push(`${swapped.length - 3} more`);
    facts.push(...build.figures.filter(isHeadline).flatMap(difference));
  }
  const { introduced, resolved, accepted } = build.findings;
  const grave = introduced.filter(({ finding }) => finding.severity !== 'information').length;
  if (grave > 0) facts.push(`**${grave} new**`);
  if (resolved.length > 0) facts.push(`${resolved.length} gone`);
  if (accepted.length > 0) facts.push(`${accepted.length} newly accepted`);
  const called = build.name ? `**${markdownWords(cut(build.name, 80))}** ` : '';
  return `- ${called}${markdownCode(name(build.file))}: ${facts.join('; ')}`;
}

const headlines: readonly string[] = ['weight-ready', 'time-as-flown'];
const isHeadline = ({ name }: Build['figures'][number]): boolean => headlines.includes(name);

function difference({ name, before, after }: Build['figures'][number]): readonly string[] {
  const text = before && after ? differenceText(before, after) : '';
  return text === '' ? [] : [markdownWords(`${name === 'weight-ready' ? 'weight' : 'flight time'} ${text}`)];
}

function buildBlock(build: Build, shown: ReviewShown): string {
  const called = build.name ? `<b>${htmlInComment(cut(build.name, 80))}</b> ` : '';
  const parts = [`${words(statusSentence(build, shown.name))}.`];
  if (build.status !== 'added' && build.status !== 'deleted' && build.swaps.length > 0)
    parts.push(build.swaps.flatMap((swap) => swapItems(swapWords(swap))).join('\n'));
  if (build.status !== 'deleted') parts.push(...figureTable(build));
  if (build.price && build.status !== 'deleted') parts.push(`${words(priceSentence(build.price))}.`);
  parts.push(...findingParts(build, shown));
  return folded(`${called}<code>${htmlInComment(shown.name(build.file))}</code>`, parts.join('\n\n'));
}

const swapItems = ({ line, fields }: SwapWords): string[] => [
  `- ${words(line)}`,
  ...fields.slice(0, 40).map((field) => `  - ${words(field)}`),
  ...(fields.length > 40 ? [`  - and ${fields.length - 40} more`] : []),
];

/** Cells hold our own words and numbers; code would not be safe in a table. */
function figureTable(build: Build): string[] {
  const asked = askedFigures(build.figures);
  const rows = asked.flatMap((change) => figureRow(change) ?? []);
  if (rows.length === 0) return [];
  const isNew = build.status === 'added';
  const heads = isNew ? ['', 'figure'] : ['', 'before', 'after', 'difference', ''];
  const body = rows.map(({ title, pack, before, after, difference: by, verdict }) => {
    const what = pack === undefined ? title : `${title}, pack ${cut(pack, 40)}`;
    return (isNew ? [what, after] : [what, before, after, by, verdict]).map(markdownWords);
  });
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [[line(heads), line(heads.map(() => '---')), ...body.map(line)].join('\n')];
}

function findingParts({ findings }: BuildReview | FileReview, shown: ReviewShown): string[] {
  const [before, after] = [whereIn(shown, shown.review.sides.before), whereIn(shown, shown.review.sides.after)];
  const { introduced, resolved, accepted, remaining } = findings;
  const parts: string[] = [];
  const group = (title: string, items: readonly string[]): void => {
    if (items.length > 0) parts.push(`**${title}**\n\n${items.join('\n')}`);
  };
  group(
    'New',
    introduced.map(({ finding, was }) =>
      findingItem(
        finding,
        after,
        was === undefined
          ? ''
          : was === 'accepted'
            ? 'no longer accepted: '
            : `was ${markdownWords(severityWords[was])}: `,
      ),
    ),
  );
  group(
    'Gone',
    resolved.map((finding) => findingItem(finding, before)),
  );
  group(
    'Newly accepted',
    accepted.map(({ finding }) => findingItem(finding, after)),
  );
  if (remaining.length > 0) parts.push(`Still there: ${plural(remaining.length, 'finding')}.`);
  return parts;
}

function fileBlock(file: FileReview, shown: ReviewShown): string {
  const users = (id: string): number =>
    shown.review.builds.filter((build) => build.draws.has(`${file.file} ${id}`)).length;
  const items = [
    ...partsWords(file, shown.name, users).flatMap(swapItems),
    ...file.changes.map((change) => `- ${words(changeWords(change))}`),
  ];
  const parts = [`${words(statusSentence(file, shown.name))}.`];
  if (items.length > 0) parts.push(items.join('\n'));
  parts.push(...findingParts(file, shown));
  return folded(`<code>${htmlInComment(shown.name(file.file))}</code>`, parts.join('\n\n'));
}
