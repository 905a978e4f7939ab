/** Compares the findings of two versions by what they are about, never by line: new, gone, still there, newly accepted. */
import { type Finding, isAtLeast, type Severity } from '../build/finding';

export interface NewFinding {
  readonly finding: Finding;
  /** It was there already, but milder or accepted. */
  readonly was?: Severity | 'accepted';
}

export interface AcceptedFinding {
  readonly finding: Finding;
  /** It was not there before. */
  readonly fresh: boolean;
}

export interface FindingChanges {
  readonly introduced: readonly NewFinding[];
  /** As they were found in the older version. */
  readonly resolved: readonly Finding[];
  /** Open in both; as found in the newer version. */
  readonly remaining: readonly Finding[];
  readonly accepted: readonly AcceptedFinding[];
}

export const noFindings: FindingChanges = { introduced: [], resolved: [], remaining: [], accepted: [] };

/** @param renamed spells a fingerprint of the older version as the newer one would */
export function compareFindings(
  before: readonly Finding[],
  after: readonly Finding[],
  renamed: (fingerprint: string) => string = (fingerprint) => fingerprint,
): FindingChanges {
  const left = new Map(before.map((finding, i) => [i, finding] as const));
  const old = new Map<Finding, Finding>();
  const match = (keyOfOld: (finding: Finding) => string, keyOfNew: (finding: Finding) => string): void => {
    const byKey = new Map<string, number[]>();
    for (const [i, finding] of left) {
      const key = keyOfOld(finding);
      byKey.set(key, [...(byKey.get(key) ?? []), i]);
    }
    for (const finding of after) {
      if (old.has(finding)) continue;
      const i = byKey.get(keyOfNew(finding))?.shift();
      if (i === undefined) continue;
      old.set(finding, left.get(i)!);
      left.delete(i);
    }
  };
  const about = (finding: Finding): string => placeless(finding.fingerprint);
  const aboutOld = (finding: Finding): string => placeless(renamed(finding.fingerprint));
  match(
    (finding) => `${aboutOld(finding)}\n${finding.message}`,
    (finding) => `${about(finding)}\n${finding.message}`,
  );
  match(aboutOld, about);
  // Said again elsewhere, as when a part moved into a stack.
  match(sameWords, sameWords);

  const introduced: NewFinding[] = [];
  const remaining: Finding[] = [];
  const accepted: AcceptedFinding[] = [];
  for (const finding of after) {
    const was = old.get(finding);
    if (finding.accepted !== undefined) {
      if (was?.accepted === undefined) accepted.push({ finding, fresh: was === undefined });
    } else if (!was) introduced.push({ finding });
    else if (was.accepted !== undefined) introduced.push({ finding, was: 'accepted' });
    else if (!isAtLeast(was.severity, finding.severity)) introduced.push({ finding, was: was.severity });
    else remaining.push(finding);
  }
  const resolved = [...left.values()].filter((finding) => finding.accepted === undefined);
  return { introduced, resolved, remaining, accepted };
}

/** The same fact is meant whether the build says it or the part that it uses. */
const placeless = (fingerprint: string): string => fingerprint.replaceAll('.use>', '.');

const sameWords = (finding: Finding): string => `${finding.check}\n${finding.message}`;

/** Whether a change makes a check fail that passed before. What can burn or injure counts although it was accepted. */
export const introducesAt = ({ introduced, accepted }: FindingChanges, threshold: Severity): boolean =>
  introduced.some(({ finding }) => isAtLeast(finding.severity, threshold)) ||
  accepted.some(({ finding, fresh }) => fresh && finding.danger && isAtLeast(finding.severity, threshold));
