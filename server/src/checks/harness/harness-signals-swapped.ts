/** Motor, current and telemetry signals arrive at one another. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-signals-swapped',
  group: 'harness',
  title: 'Cable mixes up signals',
  severity: 'warning',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['signals-swapped'],
      'warning',
      (reading) => `Supply and ground are right, but signals are mixed up: ${pairsInWords(reading, 2)}.`,
    ),
});

export const explanation = {
  why: 'A motor signal on the current input leaves the motor dead and the current reading nonsense; it looks like a bad ESC.',
  remedy: 'Move the wires before use.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: Signals in another order
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
      pins: { 1: GND, 2: VBAT, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Same order
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
      pins: { 1: GND, 2: VBAT, 3: M1, 4: M2, 5: M3, 6: M4, 7: CURR, 8: TELEM }
  harness:
    type: straight
`,
};
