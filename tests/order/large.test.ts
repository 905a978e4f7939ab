/** Orders of twenty and sixty lines: solved in time or with the proved gap, and never dearer than what a careful hand finds. */
import { beforeAll, describe, expect, it } from 'vitest';
import { cheapestEverywhere, type Solver, singleShop, solveOrder } from '../../server/src/plan/order-solve';
import { loadSolver } from '../../server/src/solver/load';
import { byHand } from './by-hand';
import { drawnOrder } from './instances';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

describe('twenty lines at eight shops', () => {
  for (let seed = 101; seed < 111; seed++)
    it(`seed ${seed}`, { timeout: 30_000 }, async () => {
      const { shopsAtMost: _, ...problem } = drawnOrder(seed, { lines: 20, shops: 8 });
      const answer = await solveOrder(problem, solver, 10);
      if (!answer.ok) return expect(byHand(problem)).toBeUndefined();
      expect(answer.order.optimal).toBe(true);
      for (const other of [byHand(problem), cheapestEverywhere(problem)?.total, singleShop(problem)?.priced.total])
        if (other !== undefined) expect(answer.order.priced.total).toBeLessThanOrEqual(other);
    });
});
