/** The limits a builder knows by heart, on generated builds of every class: just inside nothing is said, just outside it is. */
import { describe, expect, it } from 'vitest';
import { allChecks } from '../../server/src/checks/generated/all';
import { generated } from './generated-build';
import { seeds } from './seeds';
import { judged } from './show-mistake';
import { tradeLimits } from './trade-limits';

const wanted = 8;

describe.each(tradeLimits)('$check: $limit', ({ check: id, sides }) => {
  it(`holds on ${wanted} builds`, () => {
    const check = allChecks.find((one) => one.id === id)!;
    expect(check, 'there is such a check').toBeDefined();
    let tried = 0;
    for (const seed of seeds(200, 9000)) {
      if (tried === wanted) break;
      const pair = generated(seed);
      const both = sides(pair);
      if (!both) continue;
      tried++;
      const [inside, outside] = [judged(both.inside, seed, check), judged(both.outside, seed, check)];
      const told = `seed ${seed}, ${pair.choices.craft.name}`;
      expect(inside.ran, told).toContain(id);
      expect(
        inside.findings.filter((one) => one.check === id).map((one) => one.message),
        `${told}: just inside`,
      ).toEqual([]);
      expect(outside.findings.filter((one) => one.check === id).length, `${told}: just outside`).toBeGreaterThan(0);
    }
    expect(tried).toBe(wanted);
  });
});
