/** How long proved orders take: twenty lines at eight shops, sixty at twelve; prints time, value and proved gap. */

import { solveOrder } from '../../server/src/plan/order-solve';
import { loadSolver } from '../../server/src/solver/load';
import { drawnOrder } from '../order/instances';

const start = performance.now();
const solver = await loadSolver();
console.log(`solver loaded in ${(performance.now() - start).toFixed(0)} ms`);
for (const [lines, shops, limit] of [
  [14, 6, 20],
  [20, 8, 20],
  [60, 12, 20],
] as const) {
  const times: number[] = [];
  for (let seed = 201; seed < 211; seed++) {
    const { shopsAtMost: _, ...problem } = drawnOrder(seed, { lines, shops });
    const from = performance.now();
    const answer = await solveOrder(problem, solver, limit);
    const ms = performance.now() - from;
    times.push(ms);
    const told = answer.ok
      ? `${(answer.order.priced.total / 100).toFixed(2)}, ${answer.order.optimal ? 'proved' : `gap ${(((answer.order.priced.total - answer.order.bound) / answer.order.priced.total) * 100).toFixed(2)} %`}`
      : answer.why;
    console.log(`${lines} lines, ${shops} shops, seed ${seed}: ${ms.toFixed(0)} ms, ${told}`);
  }
  times.sort((a, b) => a - b);
  console.log(`  median ${times[5]!.toFixed(0)} ms, slowest ${times.at(-1)!.toFixed(0)} ms`);
}
