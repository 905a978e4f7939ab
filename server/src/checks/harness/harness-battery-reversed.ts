/** Plus and minus of the flight controller supply are exchanged by the cable. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-battery-reversed',
  group: 'harness',
  title: 'Cable swaps plus and minus',
  severity: 'error',
  danger: 'fire',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['battery-reversed'],
      'error',
      (reading) =>
        `Do not plug this cable in: plus and minus arrive exchanged: ${pairsInWords(reading, 3)}. The flight controller would burn.`,
    ),
});

export const explanation = {
  why: 'Flight controllers have no protection against a reversed supply: the regulators and all that hangs on them burn.',
  remedy: 'Do not plug in. Exchange the two supply wires first.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: Two contacts exchanged
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
      pins: { 1: GND, 2: VBAT, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Both begin with ground
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: GND, 2: VBAT, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: GND, 2: VBAT, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: straight
`,
};
