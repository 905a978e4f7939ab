/** Runs the checks over a build that was edited: those that found nothing and looked at nothing that is different now are not asked again. The answer is that of a run from the start. */
import type { Craft } from '../build/craft';
import { addPieces, changedPieces, haveCommon, type Pieces } from '../build/pieces';
import type { FileDocument } from '../build/source-file';
import { watchCraft, watched } from '../build/watched-craft';
import type { Check } from './check';
import { type CheckRun, foundBy, type Outcome, runCheck, together } from './run';

/** What a run leaves to the next one. */
export interface LastRun {
  readonly checks: readonly Check[];
  /** What the craft was read from. */
  readonly document: FileDocument;
  readonly outcomes: readonly Outcome[];
  readonly run: CheckRun;
  /** By check, every piece that it has ever looked at. Only grows: to ask once too often is no harm. */
  readonly looked: readonly Pieces[];
}

/** @param last of the same build, in the same workspace, when there was one */
export function runAgain(
  checks: readonly Check[],
  craft: Craft,
  document: FileDocument,
  last: LastRun | undefined,
): { readonly run: CheckRun; readonly last: LastRun } {
  const changed = last?.checks === checks ? changedPieces(last.document, document) : undefined;
  const kept = changed && last;
  const looked: readonly Pieces[] = kept ? kept.looked : checks.map(() => []);
  watchCraft(craft);
  const outcomes = kept ? [...kept.outcomes] : [];
  let sameAnswers = true;
  for (const [i, check] of checks.entries()) {
    const known = kept?.outcomes[i];
    // Only silence is taken over: a finding says where things stand, and that moves with every letter.
    if (known && changed && known.findings.length === 0 && !haveCommon(looked[i]!, changed)) continue;
    const { value, pieces } = watched(craft, () => runCheck(check, craft));
    if (pieces) addPieces(looked[i]!, pieces);
    outcomes[i] = value;
    if (known && !sameAnswer(known, value)) sameAnswers = false;
  }
  const run = kept && sameAnswers ? { ...kept.run, findings: foundBy(outcomes) } : together(checks, outcomes);
  return { run, last: { checks, document, outcomes, looked, run } };
}

/** Whether two outcomes compared as much and miss the same, whatever they found. */
const sameAnswer = (one: Outcome, other: Outcome): boolean =>
  one.ran === other.ran &&
  one.missing.size === other.missing.size &&
  [...one.missing].every((fact) => other.missing.has(fact));
