/** The flight controller is mounted turned, and the board rotation in the firmware says otherwise. */

import { check } from '../check';
import { write } from '../edit';

const turn = (degrees: number): number => ((Math.round(degrees) % 360) + 360) % 360;

export default check({
  id: 'board-rotation-unset',
  group: 'mechanical',
  title: 'Board is turned, the firmware does not know',
  severity: 'error',
  danger: 'blades',
  needs: { rotated: 'flight-controller.rotated' },
  may: { set: 'setup.board-rotation' },
  // A board that nobody speaks of points forward.
  when: (craft) =>
    craft.roles['flight-controller']?.rotated !== undefined || (craft.said.setup?.['board-rotation']?.value ?? 0) !== 0,
  judge({ rotated, set }) {
    const angle = turn(rotated.value);
    if (!set) {
      if (angle === 0) return undefined;
      return {
        at: rotated,
        severity: 'warning',
        message: `The board is mounted turned by ${angle} degrees, and no \`board-rotation\` is written down under \`setup\`. Set it in the firmware before the first take-off, or the craft flips.`,
      };
    }
    // The sense of turning is counted differently from firmware to firmware.
    if (turn(set.value) === angle || turn(-set.value) === angle) return undefined;
    return {
      at: set,
      with: [{ fact: rotated, says: `the board is turned by ${angle} degrees` }],
      message: `The board is mounted turned by ${angle} degrees; the firmware is told ${turn(set.value)}. The craft would flip at take-off. Set the rotation to ${angle}, or turn the board back.`,
      fixes: [write(set, `${angle} deg`)],
    };
  },
});

export const explanation = {
  why: 'With the wrong board rotation the craft corrects in the wrong direction and flips at take-off.',
  remedy: 'Set the board rotation in the firmware to the angle the arrow is turned by.',
  source: 'board alignment setting of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    rotated: 90 deg
setup:
  board-rotation: «0 deg»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    rotated: 90 deg
setup:
  board-rotation: 270 deg
`,
};
