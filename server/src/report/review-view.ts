/** A review for the editor's view: the same words as on the command line, as a tree, each line with its places on both sides. Lays out; compares nothing. */
import type { Finding } from '../build/finding';
import type { Place } from '../build/place';
import type { Change } from '../review/change';
import type { BuildReview, FileReview } from '../review/review';
import type { Swap } from '../review/swaps';
import type { LinePosition } from '../text/lines';
import { positionAt } from '../text/lines';
import type { Where } from './findings-json';
import { cut, visible } from './markdown-safe';
import { askedFigures, figureRow } from './review-figures';
import { type ReviewShown, whereIn } from './review-shown';
import {
  changeWords,
  partsWords,
  plural,
  priceSentence,
  type Sentence,
  severityWords,
  shownFields,
  statusSentence,
  summaryWords,
  swapWords,
} from './review-words';

export interface Spot {
  readonly file: string;
  readonly start: LinePosition;
  readonly end: LinePosition;
}

export interface ViewNode {
  readonly label: string;
  readonly detail?: string;
  readonly is?: 'build' | 'file' | 'new' | 'gone' | 'accepted' | 'figure' | 'swap' | 'note';
  readonly severity?: Finding['severity'];
  readonly before?: Spot;
  readonly after?: Spot;
  readonly nodes?: readonly ViewNode[];
}

export interface ReviewView {
  readonly base: string;
  readonly head: string;
  readonly summary: string;
  readonly nodes: readonly ViewNode[];
  /** What the change brought about, for marking where it stands. */
  readonly introduced: readonly (Spot & { readonly check: string })[];
  /** Texts of the older version that the nodes point into. */
  readonly texts: Readonly<Record<string, string>>;
}

export function reviewAsView(shown: ReviewShown): ReviewView {
  const { review, base, head, name, notes } = shown;
  const sides = { before: whereIn(shown, review.sides.before), after: whereIn(shown, review.sides.after) };
  const nodes = [
    ...review.builds.map((build) => buildNode(build as ReviewShown['review']['builds'][number], shown, sides)),
    ...review.files.map((file) => fileNode(file, shown, sides)),
    ...notes.map((note): ViewNode => ({ label: visible(note), is: 'note' })),
  ];
  const introduced = [...review.builds, ...review.files].flatMap(({ findings }) =>
    findings.introduced.map(({ finding }) => ({ ...spot(finding.at, sides.after), check: finding.check })),
  );
  const pointed = pointedAt(nodes);
  const texts = Object.fromEntries(
    [...review.sides.before.texts]
      .map(([uri, text]) => [name(uri), text] as const)
      .filter(([file]) => pointed.has(file)),
  );
  return { base, head, summary: summaryWords(review.builds, review.files), nodes, introduced, texts };
}

interface Sides {
  readonly before: Where;
  readonly after: Where;
}

function pointedAt(nodes: readonly ViewNode[]): ReadonlySet<string> {
  const files = new Set<string>();
  const visit = (node: ViewNode): void => {
    if (node.before) files.add(node.before.file);
    node.nodes?.forEach(visit);
  };
  nodes.forEach(visit);
  return files;
}

const words = (sentence: Sentence): string =>
  sentence.map((piece) => (typeof piece === 'string' ? piece : cut(visible(piece.said)))).join('');

function spot(place: Place, where: Where): Spot {
  const lines = where.file(place.file)?.lines ?? [0];
  return {
    file: where.name(place.file),
    start: positionAt(lines, place.span.start),
    end: positionAt(lines, place.span.end),
  };
}

const spots = (change: Change | undefined, { before, after }: Sides): Pick<ViewNode, 'before' | 'after'> => ({
  ...(change?.beforeAt ? { before: spot(change.beforeAt, before) } : {}),
  ...(change?.afterAt ? { after: spot(change.afterAt, after) } : {}),
});

const top = (file: string): Spot => ({ file, start: { line: 0, character: 0 }, end: { line: 0, character: 0 } });

function wholeFile(
  { file, from, status }: BuildReview | FileReview,
  { name }: ReviewShown,
): Pick<ViewNode, 'before' | 'after'> {
  return {
    ...(status === 'added' ? {} : { before: top(name(from ?? file)) }),
    ...(status === 'deleted' ? {} : { after: top(name(file)) }),
  };
}

function buildNode(build: ReviewShown['review']['builds'][number], shown: ReviewShown, sides: Sides): ViewNode {
  const compared = build.status !== 'added' && build.status !== 'deleted';
  const nodes = [
    ...findingNodes(build, sides),
    ...(compared ? build.swaps.map((swap) => swapNode(swap, build, sides)) : []),
    ...(build.status === 'deleted' ? [] : figureNodes(build)),
    ...(build.price && build.status !== 'deleted'
      ? [{ label: words(priceSentence(build.price)), is: 'figure' } as const]
      : []),
  ];
  return {
    label: cut(visible(build.name || shown.name(build.file)), 80),
    detail: `${visible(shown.name(build.file))}: ${words(statusSentence(build, shown.name))}`,
    is: 'build',
    ...wholeFile(build, shown),
    nodes,
  };
}

function swapNode(swap: Swap, build: BuildReview, sides: Sides): ViewNode {
  const { line, fields } = swapWords(swap);
  const changed = build.changes.find(({ path }) => path === `${swap.head}.use`) ?? swap.fields[0];
  const shown = shownFields(swap);
  return {
    label: words(line),
    is: 'swap',
    ...spots(changed, sides),
    nodes: fields.map((field, i) => ({ label: words(field), ...spots(shown[i], sides) })),
  };
}

function figureNodes(build: ReviewShown['review']['builds'][number]): readonly ViewNode[] {
  return askedFigures(build.figures).flatMap((change) => {
    const row = figureRow(change);
    if (!row) return [];
    const title = row.pack === undefined ? row.title : `${row.title} with ${visible(row.pack)}`;
    if (build.status === 'added') return [{ label: `${title}: ${row.after}`, is: 'figure' as const }];
    return [
      {
        label: `${title}: ${row.before} → ${row.after}`,
        detail: [row.difference, row.verdict].filter(Boolean).join(', '),
        is: 'figure' as const,
      },
    ];
  });
}

function findingNodes({ findings }: BuildReview | FileReview, { before, after }: Sides): readonly ViewNode[] {
  const node = (finding: Finding, lead: string, is: ViewNode['is']): ViewNode => ({
    label: `${lead}: ${severityWords[finding.severity]}, ${finding.check}`,
    detail: cut(visible(finding.message), 1500),
    is,
    severity: finding.severity,
    ...(is === 'gone' ? { before: spot(finding.at, before) } : { after: spot(finding.at, after) }),
  });
  return [
    ...findings.introduced.map(({ finding, was }) =>
      node(finding, was === undefined ? 'new' : was === 'accepted' ? 'no longer accepted' : 'graver now', 'new'),
    ),
    ...findings.accepted.map(({ finding }) => node(finding, 'accepted now', 'accepted')),
    ...findings.resolved.map((finding) => node(finding, 'gone', 'gone')),
    ...(findings.remaining.length > 0
      ? [{ label: `still there: ${plural(findings.remaining.length, 'finding')}`, is: 'note' as const }]
      : []),
  ];
}

function fileNode(file: FileReview, shown: ReviewShown, sides: Sides): ViewNode {
  const users = (id: string): number =>
    shown.review.builds.filter((build) => build.draws.has(`${file.file} ${id}`)).length;
  const parts = partsWords(file, shown.name, users).map(({ line, fields }, i): ViewNode => {
    const part = file.parts[i]!;
    return {
      label: words(line),
      is: 'swap',
      ...spots(part.fields[0], sides),
      nodes: fields.map((field, n) => ({ label: words(field), ...spots(part.fields[n], sides) })),
    };
  });
  return {
    label: visible(shown.name(file.file)),
    detail: words(statusSentence(file, shown.name)),
    is: 'file',
    ...wholeFile(file, shown),
    nodes: [
      ...findingNodes(file, sides),
      ...parts,
      ...file.changes.map((change): ViewNode => ({ label: words(changeWords(change)), ...spots(change, sides) })),
    ],
  };
}
