/** The motor order has to be set in the firmware and nothing of it is written down. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';

export default check({
  id: 'remap-after-repin',
  group: 'assembly',
  title: 'Motor order not written down',
  severity: 'information',
  needs: { harness: 'worked.harness' },
  when: joinsBoards,
  judge({ harness }, craft) {
    const remap = harness.value.reading.remap;
    if (!remap || harness.value.mirrored || craft.said.setup?.['motor-map']) return undefined;
    return {
      at: harness.value.at,
      message: `The motors arrive as ${remap.join('-')}, which the firmware can set right. Write it down: \`motor-map: ${remap.join('-')}\` under \`setup\`, as a re-flash or a preset erases it; or move the contacts.`,
    };
  },
});

export const explanation = {
  why: 'A re-flash or a preset erases it, and the craft flips at the next start.',
  remedy: 'Write `motor-map` under `setup`, or move the contacts.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1, 4: M2, 5: M3, 6: M4 }
  flight-controller:
    esc-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M4, 4: M3, 5: M2, 6: M1 }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1, 4: M2, 5: M3, 6: M4 }
  flight-controller:
    esc-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M4, 4: M3, 5: M2, 6: M1 }
  harness:
    type: straight
setup:
  motor-map: 4-3-2-1
`,
};
