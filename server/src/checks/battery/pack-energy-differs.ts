/** The energy printed on the pack is not what its cells and capacity make. */
import { packEnergy } from '../../plan/pack-energy';
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { wattHours } from '../words';

export default check({
  id: 'pack-energy-differs',
  group: 'battery',
  title: 'Printed energy does not fit the pack',
  severity: 'warning',
  needs: { printed: 'pack.energy', cells: 'pack.cells', capacity: 'pack.capacity' },
  may: { chemistry: 'pack.chemistry' },
  when: (_, pack) => pack?.facts.energy !== undefined,
  judge({ printed, cells, capacity, chemistry }) {
    const made = packEnergy(cells.value, capacity.value, chemistry?.value);
    const share = printed.value / 3600 / made;
    if (!fallsShort(share, 0.9) && !exceeds(share, 1.1)) return undefined;
    return {
      at: printed,
      with: [{ fact: capacity, says: `${cells.text} of ${capacity.text} make ${wattHours(made)}` }],
      message: `${cells.text} of ${capacity.text} make ${wattHours(made)}; ${printed.text} are written. One of the figures is wrong. Look at the label again.`,
    };
  },
});

export const explanation = {
  why: 'One of the three figures is wrong, and the flight time rests on it.',
  remedy: 'Correct the figure that was misread.',
  source:
    'energy is cells x nominal voltage x capacity; a tenth of leeway for chemistries and rounding: common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
    energy: «22.2 Wh»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
    energy: 28.9 Wh
`,
};
