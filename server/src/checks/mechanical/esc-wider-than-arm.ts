/** A single ESC is wider than the arm it lies on. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'esc-wider-than-arm',
  group: 'mechanical',
  title: 'ESC stands out from the arm',
  severity: 'information',
  needs: { esc: 'esc.outside', arm: 'frame.arm-width' },
  when: (craft) => craft.roles.esc?.type?.value === 'single',
  judge({ esc, arm }) {
    const wide = Math.min(esc.value.length, esc.value.width);
    if (!exceeds(wide, arm.value + 4e-3)) return undefined;
    return {
      at: esc,
      with: [{ fact: arm, says: `the arm is ${millimetres(arm.value)} wide` }],
      message: `The ESC is ${millimetres(wide)} wide, the arm ${millimetres(arm.value)}: it stands out by ${millimetres((wide - arm.value) / 2)} on each side and is hit first. A narrower one, or a four-in-one board in the middle, is safer.`,
    };
  },
});

export const explanation = {
  why: 'What stands out beside the arm is the first thing a branch or the ground hits.',
  remedy: 'Take a narrower ESC, or a four-in-one board in the middle.',
  source: 'common practice: 2 mm beyond the arm on each side',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    arm-width: 12 mm
  esc:
    type: single
    outside: «18x32x6 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    arm-width: 14 mm
  esc:
    type: single
    outside: 18x32x6 mm
`,
};
