/** Groups what could not be checked by the fact that would let most of it run. Words only counts. */
import type { NotChecked } from './run';

export interface MissingFact {
  /** Path of the fact, such as `motors.thread-depth`. */
  readonly fact: string;
  /** How many checks wait for it. */
  readonly checks: number;
}

/** By the list itself: most edits leave it as it was. */
const counted = new WeakMap<readonly NotChecked[], readonly MissingFact[]>();

export function missingFacts(notChecked: readonly NotChecked[]): readonly MissingFact[] {
  const known = counted.get(notChecked);
  if (known) return known;
  const made = count(notChecked);
  counted.set(notChecked, made);
  return made;
}

function count(notChecked: readonly NotChecked[]): readonly MissingFact[] {
  const counts = new Map<string, number>();
  for (const { missing } of notChecked) for (const fact of missing) counts.set(fact, (counts.get(fact) ?? 0) + 1);
  return [...counts]
    .map(([fact, checks]) => ({ fact, checks }))
    .sort((a, b) => b.checks - a.checks || (a.fact < b.fact ? -1 : 1));
}
