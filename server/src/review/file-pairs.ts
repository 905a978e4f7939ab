/** Which file of the newer version was which of the older: the same address, or renamed or moved with most of its lines. Looks at texts only. */
import type { Texts } from './texts';

export interface FilePair {
  readonly before?: string;
  readonly after?: string;
}

/** Below this share of common lines two files are two files. */
const LIKE = 0.6;
const MOST_PAIRS = 40_000;

/** Pairs of files that differ in text or address. */
export function filePairs(before: Texts, after: Texts): readonly FilePair[] {
  const gone = [...before.keys()].filter((uri) => !after.has(uri)).sort();
  const come = [...after.keys()].filter((uri) => !before.has(uri)).sort();
  const pairs: FilePair[] = [...after.keys()]
    .filter((uri) => before.has(uri) && before.get(uri) !== after.get(uri))
    .map((uri) => ({ before: uri, after: uri }));
  const taken = new Set<string>();
  const pair = (a: string, b: string): void => {
    taken.add(a);
    taken.add(b);
    pairs.push({ before: a, after: b });
  };
  const byText = new Map<string, string[]>();
  for (const uri of gone) byText.set(before.get(uri)!, [...(byText.get(before.get(uri)!) ?? []), uri]);
  for (const uri of come) {
    const same = byText.get(after.get(uri)!)?.filter((other) => !taken.has(other));
    const best = same?.find((other) => nameOf(other) === nameOf(uri)) ?? same?.[0];
    if (best !== undefined) pair(best, uri);
  }
  for (const { a, b } of alike(gone, come, taken, before, after)) if (!taken.has(a) && !taken.has(b)) pair(a, b);
  for (const uri of gone) if (!taken.has(uri)) pairs.push({ before: uri });
  for (const uri of come) if (!taken.has(uri)) pairs.push({ after: uri });
  return pairs.sort((a, b) => ((a.after ?? a.before!) < (b.after ?? b.before!) ? -1 : 1));
}

function alike(
  gone: readonly string[],
  come: readonly string[],
  taken: ReadonlySet<string>,
  before: Texts,
  after: Texts,
): readonly { a: string; b: string; like: number }[] {
  const [left, right] = [gone.filter((uri) => !taken.has(uri)), come.filter((uri) => !taken.has(uri))];
  if (left.length * right.length > MOST_PAIRS) return [];
  const lines = new Map([
    ...left.map((uri) => [uri, linesOf(before.get(uri)!)] as const),
    ...right.map((uri) => [uri, linesOf(after.get(uri)!)] as const),
  ]);
  return left
    .flatMap((a) => right.map((b) => ({ a, b, like: likeness(lines.get(a)!, lines.get(b)!) })))
    .filter(({ like }) => like >= LIKE)
    .sort((x, y) => y.like - x.like || Number(nameOf(y.a) === nameOf(y.b)) - Number(nameOf(x.a) === nameOf(x.b)));
}

const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);

function likeness(a: readonly string[], b: readonly string[]): number {
  const counts = new Map<string, number>();
  for (const line of a) counts.set(line, (counts.get(line) ?? 0) + 1);
  let same = 0;
  for (const line of b) {
    const left = counts.get(line) ?? 0;
    if (left > 0) same++;
    counts.set(line, left - 1);
  }
  return same / Math.max(a.length, b.length, 1);
}

export const nameOf = (uri: string): string => uri.slice(uri.lastIndexOf('/') + 1);
