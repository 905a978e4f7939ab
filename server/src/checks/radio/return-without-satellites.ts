/** The craft is to fly back when the link is lost, and has nothing to navigate by. */

import { check } from '../check';

export default check({
  id: 'return-without-satellites',
  group: 'radio',
  title: 'Return to home without a satellite receiver',
  severity: 'error',
  needs: { plan: 'setup.failsafe' },
  when: (craft) => craft.said.setup?.failsafe !== undefined,
  judge({ plan }, craft) {
    if (plan.value !== 'return' || craft.roles.gps) return undefined;
    return {
      message:
        'The craft is to fly back when the link is lost, and has no satellite receiver. It cannot. Add a `gps`, or choose `drop` or `land`.',
    };
  },
});

export const explanation = {
  why: 'Firmware without a position does not return: it does something else, often a drop.',
  remedy: 'Add a satellite receiver, or choose drop or land.',
  source: 'fail-safe documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
setup:
  failsafe: «return»
`,
  good: `
dryfit: build
name: Example
parts:
  gps:
    protocol: UBX
setup:
  failsafe: return
`,
};
