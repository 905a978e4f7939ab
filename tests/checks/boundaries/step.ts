/** Two texts that are neighbours: alike but for one number, and that by no more than a builder would write. */

/** By what follows the number; the first that matches counts. */
const finest: readonly (readonly [RegExp, number])[] = [
  [/^ ?mAh/, 1],
  [/^ ?mOhm/, 0.1],
  [/^ ?mA\b/, 1],
  [/^ ?mW\b/, 0.1],
  [/^ ?(?:A|V|W|Wh|kHz|EUR)\b/, 0.01],
  [/^ ?min\b/, 0.1],
  [/^ ?(?:m\/s|g|%)(?: |$)/, 0.1],
  [/^ ?(?:m|C|AWG|MHz|deg)(?: |$)/, 1],
  [/^S/, 1],
  [/^ ?GHz/, 0.001],
  [/ mm\b/, 0.1],
];
const numbers = /\d+(?:\.\d+)?/g;
const date = /^\d{4}-\d{2}-\d{2}$/;
/** `5.1x3.6x3`, `M3x8 cap`, `30.5x30.5 M3`, `9V`. */
const notations: readonly (readonly [RegExp, number])[] = [
  [/^[\d.]+x[\d.]+x\d$/, 0.01],
  [/^M[\d.]+(?:x[\d.]+.*)?$/, 0.1],
  [/^[\d.]+x[\d.]+ M[\d.]+$/, 0.1],
  [/^[\d.]+V$/, 0.1],
];

/** Why they are no neighbours; nothing when they are. */
export function notNeighbours(a: string | undefined, b: string | undefined): string | undefined {
  // One thing more or less is the least there is.
  if (a === undefined || b === undefined) return a === b ? 'the same value' : undefined;
  if (date.test(a) && date.test(b))
    return Math.abs(Date.parse(a) - Date.parse(b)) === 864e5 ? undefined : 'more than a day apart';
  if (a.replace(numbers, '#') !== b.replace(numbers, '#')) return 'written in different ways';
  const [left, right] = [[...a.matchAll(numbers)], [...b.matchAll(numbers)]];
  const moved = left.flatMap((one, i) => (Number(one[0]) === Number(right[i]![0]) ? [] : [i]));
  const [first] = moved;
  if (first === undefined) return 'the same value';
  const [one, other] = [left[first]!, right[first]!];
  // A square pattern is turned as a whole.
  if (moved.some((i) => left[i]![0] !== one[0] || right[i]![0] !== other[0])) return 'several numbers differ';
  const after = a.slice(one.index + one[0].length);
  const most = [
    ...notations.filter(([notation]) => notation.test(a)),
    ...finest.filter(([unit]) => unit.test(after)),
  ][0]?.[1];
  const apart = Math.abs(Number(one[0]) - Number(other[0]));
  return apart > (most ?? (/\./.test(one[0] + other[0]) ? 0.1 : 1)) + 1e-9 ? `${apart} apart` : undefined;
}

/** A text between two neighbours, a hair beyond the first; not every notation can write it. */
export function hairBeyond(a: string, b: string): string {
  const others = b.match(numbers) ?? [];
  let at = -1;
  return a.replace(numbers, (one) => {
    at += 1;
    return String(Number((Number(one) + (Number(others[at]) - Number(one)) * 0.03).toFixed(6)));
  });
}
