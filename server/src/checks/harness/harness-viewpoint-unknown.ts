/** Whether the cable is right depends on the end from which the drawings count. */

import { joinsBoards } from '../../plan/craft-harness';
import type { Reading } from '../../plan/harness';
import { check } from '../check';
import { pairsInWords, settled } from '../harness-words';

export default check({
  id: 'harness-viewpoint-unknown',
  group: 'harness',
  title: 'Not known from which end the contacts are counted',
  severity: 'warning',
  danger: 'fire',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge({ harness }) {
    const { reading, mirrored, at, escPins, controllerPins, assumed } = harness.value;
    if (!mirrored || settled(harness.value)) return undefined;
    const worst = Math.max(reading.danger, mirrored.danger);
    if (worst < 2) return undefined;
    const says = (one: Reading): string =>
      one.danger === 0
        ? 'everything meets its like'
        : one.danger >= 4
          ? `it destroys a board: ${pairsInWords(one, 3)}`
          : `signals are mixed up: ${pairsInWords(one, 1)}`;
    return {
      at,
      with: [
        ...(at === escPins ? [] : [{ fact: escPins, says: 'the contacts of the ESC' }]),
        { fact: controllerPins, says: 'the contacts of the flight controller' },
      ],
      severity: 'warning',
      danger: worst >= 4 ? 'fire' : undefined,
      message: `The two pin lists may count from different ends.${assumed ? ' The cable is not described either.' : ''} Read as written ${says(reading)}. With one of them counted from the other end ${says(mirrored)}. Say \`counted-from: marked pin\` on both sockets once you know, and measure before you plug in.`,
    };
  },
});

export const explanation = {
  why: 'Printed pin orders count from either end. Read the wrong way the same cable joins battery to signal.',
  remedy: 'Say where contact 1 is: marked pin, and from where the drawing looks. Measure before the first plug-in.',
  source: 'printed pin orders of one maker that run in both directions, as reported',
  bad: `
dryfit: build
name: Two drawings, no pin 1
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      pins: { 1: GND, 2: VBAT, 3: M1, 4: M2, 5: M3, 6: M4, 7: CURR, 8: TELEM }
  flight-controller:
    esc-socket:
      series: SH 1.0
      pins: { 1: TELEM, 2: CURR, 3: M4, 4: M3, 5: M2, 6: M1, 7: VBAT, 8: GND }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Both count from the marked pin
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: GND, 2: VBAT, 3: M1, 4: M2, 5: M3, 6: M4, 7: CURR, 8: TELEM }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: TELEM, 2: CURR, 3: M4, 4: M3, 5: M2, 6: M1, 7: VBAT, 8: GND }
  harness:
    type: crossed
`,
};
