/** Arming is not on a switch of its own. */

import { check } from '../check';

export default check({
  id: 'arming-without-switch',
  group: 'radio',
  title: 'Arming has no switch of its own',
  severity: 'warning',
  danger: 'blades',
  needs: { own: 'setup.arm-switch' },
  when: (craft) => craft.said.setup?.['arm-switch'] !== undefined,
  judge({ own }) {
    if (own.value) return undefined;
    return {
      message:
        'Arming has no switch of its own. Motors start by accident, in hands and in the car. Put it on a switch, safe when it is let go.',
    };
  },
});

export const explanation = {
  why: 'Stick arming starts motors by accident, in hands and in the car.',
  remedy: 'Put arming on its own switch, safe in the position it falls into.',
  source: 'arming documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
setup:
  arm-switch: «no»
`,
  good: `
dryfit: build
name: Example
setup:
  arm-switch: yes
`,
};
