/** What every form of a review needs beside the review: what its two versions are called, how files are called, what was not read. Data only. */
import type { Finding } from '../build/finding';
import type { SourceFile } from '../build/source-file';
import type { Review } from '../review/review';
import type { Side } from '../review/texts';
import { lineStarts } from '../text/lines';
import type { CardFigure } from './card-figure';
import type { Where } from './findings-json';

export interface ReviewShown {
  readonly review: Review<CardFigure>;
  /** As they were asked for, such as `main` and `working tree`. */
  readonly base: string;
  readonly head: string;
  readonly name: (uri: string) => string;
  /** What was left out, in sentences of ours; names of files in backticks. */
  readonly notes: readonly string[];
}

/** Lines are counted anew: a review of thousands of builds doesn't keep them in memory. */
export function whereIn({ name }: Pick<ReviewShown, 'name'>, { texts }: Side): Where {
  const known = new Map<string, Pick<SourceFile, 'lines'>>();
  return {
    name,
    file(uri) {
      const text = texts.get(uri);
      if (!known.has(uri) && text !== undefined) known.set(uri, { lines: lineStarts(text) });
      return known.get(uri);
    },
  };
}

/** Findings that the change brought about, gravest first: new ones, and dangerous ones that were accepted at once. */
export function introducedFindings({ review }: ReviewShown): readonly Finding[] {
  const order = { error: 0, warning: 1, information: 2 } as const;
  return [...review.builds, ...review.files]
    .flatMap(({ findings }) => [
      ...findings.introduced.map(({ finding }) => finding),
      ...findings.accepted.flatMap(({ finding, fresh }) => (fresh && finding.danger ? [finding] : [])),
    ])
    .sort((a, b) => order[a.severity] - order[b.severity]);
}
