/** The voltages that the firmware warns and lands at are too low for the pack, or in the wrong order. */

import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { write } from '../edit';
import { volts } from '../words';

export default check({
  id: 'landing-voltage-too-low',
  group: 'battery',
  title: 'Warnings come too late',
  severity: 'warning',
  needs: { chemistry: 'pack.chemistry' },
  may: { warn: 'setup.cell-warning', land: 'setup.cell-landing', limit: 'pack.landing-voltage' },
  when: (craft) => craft.said.setup?.['cell-warning'] !== undefined || craft.said.setup?.['cell-landing'] !== undefined,
  judge({ chemistry, warn, land, limit }) {
    const floor = limit?.value ?? (chemistry.value === 'Li-ion' ? 2.5 : 3);
    const says = limit
      ? [{ fact: limit, says: `the pack stands ${limit.text}` }]
      : [{ fact: chemistry, says: `a ${chemistry.text} pack` }];
    if (warn && land && !exceeds(warn.value, land.value))
      return {
        at: warn,
        with: [{ fact: land, says: `it lands at ${land.text}` }],
        message: `The warning at ${warn.text} a cell comes no earlier than landing at ${land.text}. Set the warning higher, 3.5 V for LiPo.`,
        fixes: land.value < 3.5 ? [write(warn, '3.5 V')] : [],
      };
    if (land && fallsShort(land.value, floor))
      return {
        at: land,
        with: says,
        // Above what the chemistry stands it is a matter of how the pack ages.
        severity: fallsShort(land.value, chemistry.value === 'Li-ion' ? 2.5 : 3) ? 'warning' : 'information',
        message: `Landing at ${land.text} a cell is below the ${volts(floor)} that this pack stands. It ages faster for it. Set 3.3 V for LiPo, or what the maker of the cells says.`,
        fixes:
          chemistry.value !== 'Li-ion' && floor <= 3.3 && (!warn || warn.value > 3.3) ? [write(land, '3.3 V')] : [],
      };
    return undefined;
  },
});

export const explanation = {
  why: 'A lithium cell taken below its limit loses capacity for good, and puffs.',
  remedy: 'Warn at 3.5 V a cell and land at 3.3 V under load; Li-ion goes lower, by its maker.',
  source: 'defaults of widely used open flight firmware (3.5 and 3.3 V); Li-ion limits of cell makers, common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    chemistry: LiPo
setup:
  cell-landing: «2.8 V»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    chemistry: LiPo
setup:
  cell-warning: 3.5 V
  cell-landing: 3.3 V
`,
};
