/** The pack has more or fewer cells than the charger takes. */

import { check } from '../check';
import { cellsOf } from '../words';

export default check({
  id: 'charger-cells-too-few',
  group: 'battery',
  title: 'Charger does not reach these cells',
  severity: 'error',
  needs: { cells: 'pack.cells', charger: 'bench.charger.cells' },
  may: { balance: 'bench.charger.balance' },
  judge({ cells, charger, balance }) {
    const { series } = cells.value;
    if (series > charger.value.most)
      return {
        at: cells,
        with: [{ fact: charger, says: `the charger takes ${charger.text}` }],
        message: `Your charger takes ${charger.text}; this pack is ${cellsOf(series)}. It cannot be charged. Use packs of ${cellsOf(charger.value.most)}, or another charger.`,
      };
    if (series < charger.value.least)
      return {
        at: cells,
        with: [{ fact: charger, says: `the charger takes ${charger.text}` }],
        severity: 'warning',
        message: `Your charger takes ${charger.text}; this pack is ${cellsOf(series)}. It needs a serial board or a charger of its own.`,
      };
    if (balance && series > 1 && series > balance.value)
      return {
        at: cells,
        with: [{ fact: balance, says: `its balance port reaches ${cellsOf(balance.value)}` }],
        message: `The balance port of your charger reaches ${cellsOf(balance.value)}; this pack is ${cellsOf(series)}. Without balancing it must not be charged. Use a balance adapter or another charger.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'A pack that cannot be charged at home is of no use.',
  remedy: 'Take a charger for these cells, or packs for this charger.',
  source: "the charger maker's range",
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: «6S»
---
dryfit: bench
charger:
  cells: 1S-4S
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
---
dryfit: bench
charger:
  cells: 1S-6S
`,
};
