/** Closes in on the number at which a check begins to speak, between its own two examples on a generated build. Asserts nothing. */
import type { Check } from '../../server/src/checks/check';
import { type Dial, dials, turned } from './between';
import { finds, markedParts, type Shown } from './show-mistake';

/** The limit is closed in on to this share of the way between the two examples. */
const fine = 1 / 4096;
/** Points on the way at which nothing may contradict the limit that was found. */
export const points = 12;

export function isFound(check: Check, shown: Shown, dial: Dial, value: number): boolean {
  return finds(
    shown.way.lay(shown.base, turned(shown.bad, dial, value), shown.bad),
    shown.seed,
    check,
    markedParts(check),
  );
}

/** The number that alone makes the difference, if one does. */
export const decisive = (check: Check, shown: Shown): Dial | undefined =>
  dials(shown.bad, shown.good).find(
    (dial) => isFound(check, shown, dial, dial.bad) && !isFound(check, shown, dial, dial.good),
  );

/** Outside and inside, as near to one another as the number can be told. */
export function closeIn(check: Check, shown: Shown, dial: Dial): { outside: number; inside: number } {
  let { bad: outside, good: inside } = dial;
  const least = dial.whole ? 1 : Math.abs(outside - inside) * fine;
  while (Math.abs(outside - inside) > least * 1.001) {
    const middle = dial.whole ? Math.trunc((outside + inside) / 2) : (outside + inside) / 2;
    if (isFound(check, shown, dial, middle)) outside = middle;
    else inside = middle;
  }
  return { outside, inside };
}
