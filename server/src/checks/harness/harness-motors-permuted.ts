/** Only the order of the motors differs. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict } from '../harness-words';

export default check({
  id: 'harness-motors-permuted',
  group: 'harness',
  title: 'Cable changes the order of the motors',
  severity: 'information',
  needs: { harness: 'worked.harness' },
  may: { map: 'setup.motor-map' },
  when: joinsBoards,
  judge({ harness, map }, craft) {
    // Written down as set in the firmware: the builder knows.
    if (map) return undefined;
    return harnessVerdict(
      craft,
      harness.value,
      ['motors-permuted'],
      'information',
      (reading) =>
        `The motors arrive in the order ${reading.remap?.join('-') ?? 'of another board'}; everything else is right. Set that order in the firmware, propellers off, and write it down as \`motor-map\` under \`setup\`; or re-pin.`,
    );
  },
});

export const explanation = {
  why: 'The craft flips at once when it is armed with motors in the wrong order.',
  remedy: 'Set the motor order in the firmware with propellers off, or move the wires.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice; a firmware re-flash forgets the order',
  bad: `
dryfit: build
name: Motors backwards
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: TELEM, 5: M4, 6: M3, 7: M2, 8: M1 }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Order set in the firmware
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: TELEM, 5: M4, 6: M3, 7: M2, 8: M1 }
  harness:
    type: straight
setup:
  motor-map: 4-3-2-1
`,
};
