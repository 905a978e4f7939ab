/** Finds the word somebody probably meant; knows nothing of what the words stand for. */

/** Edits (insert, delete, replace, swap of neighbours) between two words, or `limit + 1` once there are more. */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let d = Math.min(previous[j]! + 1, row[j - 1]! + 1, previous[j - 1]! + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) d = Math.min(d, before[j - 2]! + 1);
      row.push(d);
      if (d < least) least = d;
    }
    if (least > limit) return limit + 1;
    before = previous;
    previous = row;
  }
  return previous[b.length]!;
}

/** The nearest of `known` within a third of the word's length (at least 2 edits); letters' case and separators count little. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  const plain = (text: string): string => text.toLowerCase().replace(/[\s_.-]+/g, '');
  const wanted = plain(word);
  const limit = Math.max(2, Math.floor(wanted.length / 3));
  let best: string | undefined;
  let bestDistance = limit + 1;
  for (const candidate of known) {
    const other = plain(candidate);
    // A short word is never "near" to one it shares almost nothing with.
    const allowed = Math.min(limit, Math.max(1, Math.floor(other.length / 2)));
    const distance = editDistance(wanted, other, Math.min(allowed, bestDistance - 1));
    if (distance < bestDistance && distance <= allowed) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}
