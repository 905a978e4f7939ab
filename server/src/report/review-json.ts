/** A review as data for other programs. The form is a promise; what may be missing is missing there as a key. */

import type { FindingChanges } from '../review/findings';
import type { BuildReview, FileReview } from '../review/review';
import { figureAsJson } from './card-json';
import { findingAsJson } from './findings-json';
import { type ReviewShown, whereIn } from './review-shown';

export function reviewAsJson(shown: ReviewShown): unknown {
  const { review, base, head, notes } = shown;
  return {
    base,
    head,
    builds: review.builds.map((build) => buildAsJson(build as ReviewShown['review']['builds'][number], shown)),
    files: review.files.map((file) => fileAsJson(file, shown)),
    notes,
  };
}

function buildAsJson(build: ReviewShown['review']['builds'][number], shown: ReviewShown): unknown {
  return {
    file: shown.name(build.file),
    ...fromOf(build, shown),
    status: build.status,
    changes: build.changes.map(({ path, before, after }) => ({ path, before, after })),
    figures: build.figures.map(({ name, before, after, significant }) => ({
      name,
      before: before && figureAsJson(before),
      after: after && figureAsJson(after),
      significant,
    })),
    findings: findingsAsJson(build.findings, shown),
    ...(build.price ? { price: build.price } : {}),
  };
}

const fromOf = ({ from }: BuildReview | FileReview, { name }: ReviewShown): { from?: string } =>
  from === undefined ? {} : { from: name(from) };

function fileAsJson(file: FileReview, shown: ReviewShown): unknown {
  const { name, review } = shown;
  return {
    file: name(file.file),
    ...fromOf(file, shown),
    status: file.status,
    kind: file.kind ?? null,
    changes: file.changes.map(({ path, before, after }) => ({ path, before, after })),
    parts: file.parts.map((part) => ({
      id: part.id,
      is: part.is,
      ...(part.was === undefined ? {} : { was: part.was }),
      ...(part.fromFile === undefined ? {} : { from: name(part.fromFile) }),
      changes: part.fields.map(({ path, before, after }) => ({ path, before, after })),
      builds: review.builds
        .filter(({ draws }) => draws.has(`${part.file} ${part.id}`))
        .map((build) => name(build.file)),
    })),
    findings: findingsAsJson(file.findings, shown),
  };
}

function findingsAsJson({ introduced, resolved, remaining, accepted }: FindingChanges, shown: ReviewShown): unknown {
  const [before, after] = [whereIn(shown, shown.review.sides.before), whereIn(shown, shown.review.sides.after)];
  return {
    introduced: introduced.map(({ finding }) => findingAsJson(finding, after)),
    resolved: resolved.map((finding) => findingAsJson(finding, before)),
    remaining: remaining.length,
    accepted: accepted.map(({ finding }) => findingAsJson(finding, after)),
  };
}
