/** Firmware or receiver keep the last commands when the link is lost. */

import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'failsafe-keeps-flying',
  group: 'radio',
  title: 'Craft flies on when the link is lost',
  severity: 'error',
  danger: 'blades',
  needs: {},
  may: { plan: 'setup.failsafe', silent: 'receiver.failsafe-silent' },
  when: (craft) => craft.said.setup?.failsafe !== undefined || craft.roles.receiver?.['failsafe-silent'] !== undefined,
  judge({ plan, silent }) {
    if (plan?.value === 'hold')
      return {
        at: plan,
        message:
          'The craft keeps its last commands when the link is lost: it flies away, or its propellers turn on the ground. Choose `drop` or `land`, and test it with the propellers off by switching the radio off.',
        fixes: [write(plan, 'drop')],
      };
    if (silent?.value === false)
      return {
        at: silent,
        with: plan ? [{ fact: plan, says: `the firmware would ${plan.value}` }] : [],
        severity: 'warning',
        message:
          'The receiver goes on sending when the link is lost, so the firmware does not notice. Set it to send nothing, and test with the propellers off by switching the radio off.',
      };
    return undefined;
  },
});

export const explanation = {
  why: 'A craft that holds its last throttle flies away or spins on the ground with its propellers.',
  remedy: 'Let the receiver send nothing and the firmware drop or land.',
  source: 'fail-safe documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
setup:
  failsafe: «hold»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    failsafe-silent: yes
setup:
  failsafe: drop
`,
};
