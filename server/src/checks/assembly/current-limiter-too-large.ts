/** The current limiter lets through enough to burn a board. */

import { exceeds } from '../beyond';
import { check } from '../check';

export default check({
  id: 'current-limiter-too-large',
  group: 'assembly',
  title: 'Limiter lets too much through',
  severity: 'information',
  needs: { cells: 'pack.cells', limiter: 'bench.tools.current-limiter' },
  judge({ cells, limiter }) {
    const most = cells.value.series <= 2 ? 2 : 3;
    if (!exceeds(limiter.value, most)) return undefined;
    return {
      at: cells,
      with: [{ fact: limiter, says: `it trips at ${limiter.text}` }],
      message: `Your current limiter trips at ${limiter.text}; a solder bridge burns a trace below that. Use one of 1 or 2 A for the first power, with nothing but the ESC on it.`,
    };
  },
});

export const explanation = {
  why: 'A bridge then burns a trace before the limiter trips.',
  remedy: 'Use one of 1 or 2 A for the first power.',
  source: 'common practice: 2 A up to two cells, 3 A above',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: «6S»
---
dryfit: bench
tools:
  current-limiter: 8 A
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
---
dryfit: bench
tools:
  current-limiter: 1 A
`,
};
