/** The craft on the scale weighs noticeably more or less than its parts together. */

import { totalMass } from '../../physics';
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { grams } from '../words';

export default check({
  id: 'scale-disagrees',
  group: 'mass',
  title: 'Parts do not add up to what the scale says',
  severity: 'warning',
  needs: { scale: 'flight.weighed', weight: 'worked.pack-weight' },
  when: (craft, pack) =>
    craft.said.flight?.weighed !== undefined && (craft.said.flight.pack?.value ?? craft.packs[0]?.name) === pack?.name,
  judge({ scale, weight }) {
    const { rows, packRow } = weight.value;
    if (!packRow) return undefined;
    const { value: sum, low, high } = totalMass([...rows, packRow].map((row) => row.mass));
    const off = Math.abs(scale.value / sum - 1);
    const beyond = fallsShort(scale.value, low * 0.95) || exceeds(scale.value, high * 1.05);
    if (!exceeds(off, 0.06) || (!beyond && !exceeds(off, 0.15))) return undefined;
    return {
      at: scale,
      message: `The scale says ${grams(scale.value)}, the parts make ${grams(sum)} (${grams(low)} to ${grams(high)}). ${scale.value > sum ? 'Something is missing in the list' : 'A part is listed too heavy'}, or a weight is wrong. Add or correct it.`,
    };
  },
});

export const explanation = {
  why: 'A part is missing in the list, or has a wrong weight; what rests on the parts is off.',
  remedy: 'Add what is missing, or weigh the parts again.',
  source:
    'sum of the parts with its range and a twentieth beyond; at least 6 and at most 15 % of the sum: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    weight: 300 g
packs:
  main:
    cells: 6S
    weight: 200 g
flight:
  weighed: «640 g»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    weight: 300 g
packs:
  main:
    cells: 6S
    weight: 200 g
flight:
  weighed: 520 g
`,
};
