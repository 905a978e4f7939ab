/** Whether a number decides what a check says: every number of its two examples is turned, one at a time. Knows no check. */
import type { Check } from '../../../server/src/checks/check';
import { explanationOf } from '../../../server/src/checks/generated/explanations';
import { changed, valuesOf } from './example';
import { spoken } from './spoken';

/** A number behind a letter names a thing: `M3`, `XT60`, `uart1`; the `x` of a size stands between two. */
const numbers = /(?<![A-Za-wyz\d.])\d+(?:\.\d+)?/g;
const shares = [0.01, 0.1, 0.5, 0.9, 1.1, 2, 10, 100];

/** What a builder could write instead of one number. */
function others(said: string): readonly string[] {
  const value = Number(said);
  const digits = said.split('.')[1]?.length ?? 0;
  // None of a thing is its absence, no other number of it; what is counted has no halves.
  const near = [value - 1, value + 1, ...shares.map((share) => value * share)];
  const texts = near.flatMap((one) => [String(Math.round(one)), String(Number(one.toFixed(Math.max(digits, 1))))]);
  return [...new Set(texts)].filter((text) => Number(text) > 0 && Number(text) !== value);
}

/** The first turn that makes the check speak or fall silent, in words; nothing when none does. */
export function decidedBy(check: Check): string | undefined {
  for (const example of [explanationOf(check).bad, explanationOf(check).good]) {
    const found = spoken(check, changed(example, {})).findings.length > 0;
    for (const [path, text] of valuesOf(example))
      for (const match of text.matchAll(numbers)) {
        const [before, after] = [text.slice(0, match.index), text.slice(match.index + match[0].length)];
        let unread = 0;
        for (const other of others(match[0])) {
          // A word without readable neighbours, such as `5V` of a contact or `4-in-1`, holds no number.
          if (unread === 3) break;
          const turned = `${before}${other}${after}`;
          const its = spoken(check, changed(example, { [path]: turned }));
          if (its.unread.length > 0) unread++;
          else if (its.findings.length > 0 !== found) return `${path}: \`${turned}\` instead of \`${text}\``;
        }
      }
  }
  return undefined;
}
