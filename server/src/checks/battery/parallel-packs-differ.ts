/** The packs of this craft have different numbers of cells, and the bench charges packs side by side. */

import { check } from '../check';
import { cellsOf } from '../words';

export default check({
  id: 'parallel-packs-differ',
  group: 'battery',
  title: 'Packs charged side by side differ',
  severity: 'warning',
  danger: 'fire',
  needs: { parallel: 'bench.charger.parallel-board', cells: 'pack.cells' },
  when: (craft) => craft.packs.length > 1 && craft.bench?.charger?.['parallel-board']?.value === true,
  judge({ parallel, cells }, craft, pack) {
    const first = craft.packs[0];
    const other = first?.facts.cells;
    if (!other || pack === first || other.value.series === cells.value.series) return undefined;
    return {
      at: cells,
      with: [
        { fact: other, says: `\`${first.name}\` is ${cellsOf(other.value.series)}` },
        { fact: parallel, says: 'packs are charged side by side' },
      ],
      message: `This pack is ${cellsOf(cells.value.series)}, \`${first.name}\` is ${cellsOf(other.value.series)}, and your bench charges packs side by side. Joined on one board they burn. Charge the two sizes apart.`,
    };
  },
});

export const explanation = {
  why: 'Packs of different cells on one parallel board push a huge current into one another.',
  remedy: 'Never join packs of different cell counts; mark the board.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
  light:
    cells: «4S»
---
dryfit: bench
charger:
  parallel-board: yes
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
  light:
    cells: 6S
---
dryfit: bench
charger:
  parallel-board: yes
`,
};
