/** The battery contact of the ESC leads to a signal, a rail or ground of the flight controller. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { harnessVerdict, pairsInWords } from '../harness-words';

export default check({
  id: 'harness-battery-on-signal',
  group: 'harness',
  title: 'Cable puts battery voltage on a signal contact',
  severity: 'error',
  danger: 'fire',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge: ({ harness }, craft) =>
    harnessVerdict(
      craft,
      harness.value,
      ['battery-on-signal', 'battery-shorted'],
      'error',
      (reading) => `Do not plug this cable in: ${pairsInWords(reading, 5)}. The boards would be destroyed.`,
    ),
});

export const explanation = {
  why: 'Battery voltage on a pin meant for 3.3 V destroys the flight controller at plug-in, and often the ESC.',
  remedy: 'Do not plug in. Move the wires first, or solder them one by one.',
  source:
    'printed pin orders of boards and the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: Battery on a motor contact
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
      pins: { 1: M1, 2: M2, 3: M3, 4: M4, 5: CURR, 6: TELEM, 7: VBAT, 8: GND }
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
