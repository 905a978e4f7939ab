/** The balance plug has another number of contacts than the cells need. */

import { check } from '../check';
import { cellsOf } from '../words';

export default check({
  id: 'balance-plug-differs',
  group: 'battery',
  title: 'Balance plug does not fit the cells',
  severity: 'error',
  needs: { pins: 'pack.balance-pins', cells: 'pack.cells' },
  when: (_, pack) => pack?.facts['balance-pins'] !== undefined,
  judge({ pins, cells }) {
    const wanted = cells.value.series + 1;
    if (pins.value === wanted || (cells.value.series === 1 && pins.value === 0)) return undefined;
    return {
      at: pins,
      with: [{ fact: cells, says: `a ${cellsOf(cells.value.series)} pack` }],
      message: `A ${cellsOf(cells.value.series)} pack has a balance plug of ${wanted} contacts; ${pins.value} are written. Count them again, or correct the cells.`,
    };
  },
});

export const explanation = {
  why: 'A charger that sees the wrong cells charges some of them too far.',
  remedy: 'Count the contacts again: one more than cells in series.',
  source: 'JST XH balance plugs: cells + 1 contacts',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    balance-pins: «5»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    balance-pins: 7
`,
};
