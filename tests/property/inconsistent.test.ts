/** Every check on a generated build that has its mistake: the check's own bad example laid over a sound build is found there, the good one is not, and a limit between them is sharp. A new check needs nothing here. */
import { describe, expect, it } from 'vitest';
import { allChecks } from '../../server/src/checks/generated/all';
import { explanationOf } from '../../server/src/checks/generated/explanations';
import { closeIn, decisive, isFound, points } from './limits';
import { readExample } from './read-yaml';
import { seeds } from './seeds';
import { markedParts, shownMistake, skipped, tries } from './show-mistake';

const checks = allChecks.map((check) => [check.id, check] as const);

describe('each check finds its mistake on a build that is sound otherwise', () => {
  it.each(checks)('%s', { timeout: 60_000 }, (id, check) => {
    const examples = [readExample(explanationOf(check).bad), readExample(explanationOf(check).good)];
    expect(
      examples.some((one) => one.other),
      'examples are builds, with a bench, shops and references at most',
    ).toBe(false);
    const parts = [...markedParts(check)].join(', ');
    expect(
      shownMistake(check),
      `${id}: over none of ${tries} sound builds from seed ${seeds(1, skipped)[0]} is the bad example found at ${parts} while the good one is not. Say in both examples all that the mistake needs.`,
    ).toBeDefined();
  });
});

describe('one number that tells the examples apart has a sharp limit', () => {
  const limited = checks.flatMap(([id, check]) => {
    const shown = shownMistake(check);
    const dial = shown && decisive(check, shown);
    return dial ? [{ id, check, shown, dial }] : [];
  });

  it('in many checks', () => {
    expect(limited.length).toBeGreaterThan(40);
  });

  it.each(limited)('$id', ({ id, check, shown, dial }) => {
    const { outside, inside } = closeIn(check, shown, dial);
    const told = `${id}, ${dial.path}, seed ${shown.seed}, ${shown.way.name}`;
    expect(isFound(check, shown, dial, outside), `${told}: ${dial.say(outside)} is just outside`).toBe(true);
    expect(isFound(check, shown, dial, inside), `${told}: ${dial.say(inside)} is just inside`).toBe(false);
    if (dial.whole) return;
    for (let i = 0; i <= points; i++) {
      const value = dial.bad + ((dial.good - dial.bad) * i) / points;
      const beyond = Math.abs(value - dial.bad) < Math.abs(outside - dial.bad);
      const within = Math.abs(value - dial.good) < Math.abs(inside - dial.good);
      if (beyond || within) expect(isFound(check, shown, dial, value), `${told}: ${dial.say(value)}`).toBe(beyond);
    }
  });
});
