/** The flight controller gets the battery but no ground through the cable. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-ground-missing',
  group: 'harness',
  title: 'Cable brings plus but no ground',
  severity: 'error',
  danger: 'fire',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['ground-missing'],
      'error',
      (reading) =>
        `Do not plug this cable in: the battery arrives, ground does not: ${pairsInWords(reading, 3)}. The current would return through a signal pin.`,
    ),
});

export const explanation = {
  why: 'Without a ground wire the current of the whole board returns through a signal pin, which burns within seconds.',
  remedy: 'Move the ground wire to the ground contact.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: Ground at the other end
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
      pins: { 1: VBAT, 2: CURR, 3: TELEM, 4: M1, 5: M2, 6: M3, 7: M4, 8: GND }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Ground at the other end of both
parts:
  esc:
    type: 4-in-1
    controller-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: CURR, 3: TELEM, 4: M1, 5: M2, 6: M3, 7: M4, 8: GND }
  flight-controller:
    esc-socket:
      series: SH 1.0
      counted-from: marked pin
      pins: { 1: VBAT, 2: CURR, 3: TELEM, 4: M1, 5: M2, 6: M3, 7: M4, 8: GND }
  harness:
    type: straight
`,
};
