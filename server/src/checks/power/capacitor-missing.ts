/** A craft of three cells or more flies an ESC without any bulk capacitor. */

import type { Craft } from '../../build/craft';
import { check } from '../check';
import { cellsOf } from '../words';

/** A capacitor named in what comes in the box of the boards. */
function supplies(craft: Craft): boolean {
  const boxes = [craft.roles.esc, craft.roles.stack, craft.roles['all-in-one'], craft.roles['battery-lead']];
  return boxes.some((part) => part?.supplied?.items.some((item) => /capacitor/i.test(item.value)));
}

export default check({
  id: 'capacitor-missing',
  group: 'power',
  title: 'No capacitor at the battery pads',
  severity: 'warning',
  needs: { cells: 'pack.cells', supplied: 'esc.capacitor-supplied' },
  when: (craft, pack) =>
    craft.roles.capacitor === undefined && (pack?.facts.cells?.value.series ?? 0) >= 3 && !supplies(craft),
  judge({ cells, supplied }) {
    if (supplied.value) return undefined;
    const rating = cells.value.series > 6 ? '50 V' : '35 V';
    return {
      at: supplied,
      with: [{ fact: cells, says: `a ${cellsOf(cells.value.series)} pack` }],
      message: `The ESC comes without a capacitor and none is listed. On ${cellsOf(cells.value.series)} braking spikes and motor noise reach everything. Add a \`capacitor\`: 470 to 1000 uF, ${rating}, low-ESR, with short legs at the battery pads.`,
    };
  },
});

export const explanation = {
  why: 'Without it the spikes of braking and the noise of the motors reach ESC, gyro and picture.',
  remedy: 'Solder a low-ESR capacitor to the battery pads: 470 to 1000 uF, 35 V up to six cells.',
  source: 'documentation of widely used open flight firmware on noise; values: common practice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    capacitor-supplied: «no»
packs:
  main:
    cells: 6S
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    capacitor-supplied: yes
packs:
  main:
    cells: 6S
`,
};
