/** A signal of one board meets ground of the other. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-signal-on-ground',
  group: 'harness',
  title: 'Cable ties a signal to ground',
  severity: 'warning',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['signal-on-ground'],
      'warning',
      (reading) =>
        `The cable ties a signal to ground: ${pairsInWords(reading, 3)}. That channel is dead and its pin is stressed.`,
    ),
});

export const explanation = {
  why: 'A pin that is driven into ground is stressed, and what it carried is lost.',
  remedy: 'Move the wires before use.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: Second ground in the way
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
      pins: { 1: VBAT, 2: GND, 3: GND, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Two grounds on both
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: GND, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: GND, 4: TELEM, 5: M1, 6: M2, 7: M3, 8: M4 }
  harness:
    type: straight
`,
};
