/** A regulated rail of one board meets a signal or ground of the other. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-supply-on-signal',
  group: 'harness',
  title: 'Cable puts a supply rail on a signal',
  severity: 'error',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['supply-on-signal'],
      'error',
      (reading) =>
        `The cable joins a supply rail to something else: ${pairsInWords(reading, 3)}. One plug-in may damage a board.`,
    ),
});

export const explanation = {
  why: 'A 5 V rail on a 3.3 V contact destroys analog inputs and stresses the others.',
  remedy: 'Take the supply wire out of the plug and insulate it.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: Five volts on the telemetry input
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: 5V, 5: M1, 6: M2, 7: M3, 8: M4 }
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
name: Five volts on both
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: 5V, 5: M1, 6: M2, 7: M3, 8: M4 }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: 5V, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: straight
`,
};
