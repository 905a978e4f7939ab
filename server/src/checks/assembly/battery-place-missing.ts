/** Lithium packs without a place where a fire does no harm. */

import { check } from '../check';

export default check({
  id: 'battery-place-missing',
  group: 'assembly',
  title: 'No safe place for packs',
  severity: 'warning',
  danger: 'fire',
  needs: { cells: 'pack.cells', own: 'bench.tools.fire-safe-place' },
  judge({ cells, own }) {
    if (own.value) return undefined;
    return {
      at: cells,
      with: [{ fact: own, says: 'the bench has none' }],
      message:
        'Your bench has no place where a burning pack does no harm. Charge and store packs on stone or in a metal box, attended, away from the way out; a bag slows a fire, it does not stop one.',
    };
  },
});

export const explanation = {
  why: 'A pack that burns cannot be put out; it can only burn where nothing else does.',
  remedy: 'Charge attended, on stone or in a box of metal, away from the way out.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: «6S»
---
dryfit: bench
tools:
  fire-safe-place: no
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
  fire-safe-place: yes
`,
};
