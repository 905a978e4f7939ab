/** One board has nothing where the other has a function. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-wire-idle',
  group: 'harness',
  title: 'Cable leaves a contact without partner',
  severity: 'information',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['wire-idle'],
      'information',
      (reading) => `Not every contact finds its like: ${pairsInWords(reading, 1)}.`,
    ),
});

export const explanation = {
  why: 'A contact without a partner means that a motor, the current reading or the supply does not arrive.',
  remedy: 'Solder that wire, or do without the function.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: No current sensor
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: NC, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
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
name: No telemetry is common
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: NC, 5: M1, 6: M2, 7: M3, 8: M4 }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: CURR, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: straight
`,
};
