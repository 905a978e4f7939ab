/** The C rating on the label is beyond what packs of this size give. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { amperes } from '../words';

export default check({
  id: 'pack-rating-implausible',
  group: 'battery',
  title: 'Label promises more than packs give',
  severity: 'information',
  needs: { rating: 'pack.discharge', capacity: 'pack.capacity' },
  may: { resistance: 'pack.cell-resistance' },
  judge({ rating, capacity, resistance }) {
    const promised = rating.value * capacity.value;
    if (resistance || !exceeds(rating.value, 120)) return undefined;
    return {
      at: rating,
      message: `${rating.text} of ${capacity.text} would be ${amperes(promised)}; no pack of this size gives that. Measure the resistance of a cell with the charger and write it as \`cell-resistance\`: the figures then rest on that.`,
    };
  },
});

export const explanation = {
  why: 'Ratings on labels are advertising; a figure computed from them flatters the craft.',
  remedy: 'Measure the resistance of a cell and write that.',
  source: 'common practice: 120 C',
  bad: `
dryfit: build
name: Example
packs:
  main:
    capacity: 1300 mAh
    discharge: «150 C»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    capacity: 1300 mAh
    discharge: 120 C
`,
};
