/** The battery contact of the flight controller meets a signal of the ESC. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-controller-unpowered',
  group: 'harness',
  title: 'Cable leaves the flight controller without battery',
  severity: 'error',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['controller-unpowered'],
      'error',
      (reading) =>
        `The battery contact of the flight controller gets no battery: ${pairsInWords(reading, 3)}. It would stay dark, and with a second supply the ESC takes damage.`,
    ),
});

export const explanation = {
  why: 'The flight controller stays dark, and with any second supply its battery pin feeds a signal of the ESC.',
  remedy: 'Move the wires so that the battery contacts meet.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: No battery contact on the ESC
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: CURR, 2: GND, 3: NC, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Battery meets battery
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
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: straight
`,
};
