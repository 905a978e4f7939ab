/** Order statistics of a few numbers, and shares of terms. Plain arithmetic; claims nothing that so few cannot carry. */

/** Between the two nearest ranks, in proportion: type 7 of Hyndman and Fan (1996). */
export function quantile(sorted: readonly number[], share: number): number {
  const at = (sorted.length - 1) * Math.min(1, Math.max(0, share));
  const below = sorted[Math.floor(at)]!;
  return below + (sorted[Math.ceil(at)]! - below) * (at - Math.floor(at));
}

export interface Spread {
  readonly count: number;
  readonly least: number;
  readonly most: number;
  /** From three on; below it the values themselves say more. */
  readonly median: number | undefined;
  /** The middle half, from four on. */
  readonly middle: readonly [number, number] | undefined;
}

export function spreadOf(values: readonly number[]): Spread | undefined {
  if (values.length === 0) return undefined;
  const sorted = [...values].sort((a, b) => a - b);
  return {
    count: sorted.length,
    least: sorted[0]!,
    most: sorted.at(-1)!,
    median: sorted.length < 3 ? undefined : quantile(sorted, 0.5),
    middle: sorted.length < 4 ? undefined : [quantile(sorted, 0.25), quantile(sorted, 0.75)],
  };
}

export interface Share {
  readonly term: string;
  readonly count: number;
  /** Of those that say it, 0 to 1. */
  readonly share: number;
}

/** Most common first. */
export function sharesOf(terms: readonly string[]): readonly Share[] {
  const counts = new Map<string, number>();
  for (const term of terms) counts.set(term, (counts.get(term) ?? 0) + 1);
  return [...counts]
    .map(([term, count]) => ({ term, count, share: count / terms.length }))
    .sort((a, b) => b.count - a.count || (a.term < b.term ? -1 : 1));
}
