/** Whether a number decides what a check says: every number of its two examples is turned, one at a time. Knows no check. */
import type { Check } from '../../../server/src/checks/check';
import { changed, valuesOf } from './example';
import { spoken } from './spoken';

/** A number behind a letter names a thing: `M3`, `XT60`, `uart1`; the `x` of a size stands between two. */
const numbers = /(?<![A-Za-wyz\d.])\d+(?:\.\d+)?/g;
const shares = [0.01, 0.1, 0.5, 0.9, 1.1, 2, 10, 100];

/** What a builder could write instead of one number. */
function others(said: string): readonly string[] {
  const value = Number(said);
  const digits = said.split('.')[1]?.length ?? 0;
  // None of a thing is its absence, no other number of it.
  const near = [value - 1, value + 1, ...shares.map((share) => value * share)].filter((one) => one > 0);
  return [...new Set(near.map((one) => String(Number(one.toFixed(Math.max(digits, value < 10 ? 1 : 0))))))].filter(
    (text) => Number(text) !== value && Number(text) > 0,
  );
}

/** The first turn that makes the check speak or fall silent, in words; nothing when none does. */
export function decidedBy(check: Check): string | undefined {
  for (const example of [check.bad, check.good]) {
    const before = spoken(check, changed(example, {})).findings.length > 0;
    for (const [path, text] of valuesOf(example))
      for (const match of text.matchAll(numbers))
        for (const other of others(match[0])) {
          const turned = text.slice(0, match.index) + other + text.slice(match.index + match[0].length);
          const its = spoken(check, changed(example, { [path]: turned }));
          if (its.says === 'not asked' || its.unread.length > 0) continue;
          if (its.findings.length > 0 !== before) return `${path}: \`${turned}\` instead of \`${text}\``;
        }
  }
  return undefined;
}
