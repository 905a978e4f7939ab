/** The boards with their gaps are taller than the free height between the plates. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, millimetres } from '../words';

export default check({
  id: 'stack-too-tall',
  group: 'mechanical',
  title: 'Stack does not fit between the plates',
  severity: 'error',
  needs: { height: 'worked.stack-height', room: 'frame.stack-height' },
  when: (craft) => craft.boards !== 'all-in-one' || craft.roles['all-in-one']?.outside?.value.height !== undefined,
  judge({ height, room }) {
    const tall = height.value;
    const wanted = tall + 5e-3;
    if (!exceeds(wanted, room.value)) return undefined;
    const over = exceeds(tall, room.value);
    const [wants, gives] = apart(millimetres, wanted, room.value);
    return {
      at: height,
      with: [{ fact: room, says: `the frame gives ${millimetres(room.value)}` }],
      severity: over ? 'error' : 'warning',
      message: `The boards stand ${millimetres(tall)} high with the gap between them; with 3 mm below and 2 mm above that wants ${wants}, and the frame gives ${gives}. ${over ? 'They do not fit.' : 'Plugs and solder joints may touch the plates.'} Use longer standoffs or flatter boards.`,
    };
  },
});

export const explanation = {
  why: 'A stack pressed between plates bends its boards and shorts on the carbon.',
  remedy: 'Take longer standoffs, flatter boards, or one all-in-one board.',
  source: 'geometry; 3 mm below, 3 mm between boards and 2 mm above: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    stack-height: 18 mm
  stack:
    height: «20 mm»
    flight-controller:
      mount: 30.5x30.5 M3
    esc:
      mount: 30.5x30.5 M3
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    stack-height: 25 mm
  stack:
    height: 20 mm
    flight-controller:
      mount: 30.5x30.5 M3
    esc:
      mount: 30.5x30.5 M3
`,
};
