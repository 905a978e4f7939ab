/** The share of the pack in the weight of the craft is unusual. */

import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { apart, percent } from '../words';

export default check({
  id: 'pack-share-of-weight',
  group: 'battery',
  title: 'Pack weighs unusually much or little',
  severity: 'information',
  needs: { pack: 'pack.weight', weight: 'worked.pack-weight' },
  judge({ pack, weight }, craft) {
    const share = pack.value / weight.value.ready.value;
    const long = craft.said.craft?.value === 'long-range-7' || craft.said.craft?.value === 'lifter-10';
    const [least, most] = [0.15, long ? 0.55 : 0.5];
    if (!exceeds(share, most) && !fallsShort(share, least)) return undefined;
    const [heavy, usual] = apart(percent, share, most);
    const [light, little] = apart(percent, share, least);
    return {
      at: pack,
      message:
        share > most
          ? `The pack is ${heavy} of the weight; more than ${usual} is unusual for such craft. More battery hardly adds time from here; a lighter one may fly as long and better.`
          : `The pack is only ${light} of the weight; less than ${little} is unusual. The craft could carry a larger one for longer flights.`,
    };
  },
});

export const explanation = {
  why: 'Beyond about half of the weight more battery hardly adds flight time; far below a fifth the craft could carry more.',
  remedy: 'Compare the flight time with the next smaller and larger pack.',
  source: 'common practice: 20 to 45 % on open craft, up to 50 % for long range; five points more or less say nothing',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    weight: 60 g
  motors:
    weight: 9 g
    count: 4
packs:
  main:
    cells: 4S
    weight: «220 g»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    weight: 60 g
  motors:
    weight: 9 g
    count: 4
packs:
  main:
    cells: 4S
    weight: 70 g
`,
};
