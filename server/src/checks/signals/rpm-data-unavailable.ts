/** Rpm over the signal wire is wanted, and one side cannot do it. */
import { check } from '../check';

export default check({
  id: 'rpm-data-unavailable',
  group: 'signals',
  title: 'Rpm data that one side cannot give',
  severity: 'warning',
  needs: { wanted: 'setup.bidirectional', esc: 'esc.bidirectional' },
  may: { controller: 'flight-controller.bidirectional' },
  judge({ wanted, esc, controller }) {
    if (!wanted.value) return undefined;
    const blind = !esc.value
      ? (['ESC', esc] as const)
      : controller && !controller.value
        ? (['flight controller', controller] as const)
        : undefined;
    if (!blind) return undefined;
    return {
      at: wanted,
      with: [{ fact: blind[1], says: `the ${blind[0]} cannot` }],
      message: `Rpm over the signal wire is switched on, and the ${blind[0]} cannot do it: the rpm filter stays off and the craft may refuse to arm. Flash firmware that can, or switch it off.`,
      fixes: [{ title: 'Switch it off', edits: [{ file: wanted.at.file, span: wanted.at.span, text: 'no' }] }],
    };
  },
});

export const explanation = {
  why: 'Without rpm the filter that listens to it stays off, and some firmware refuses to arm.',
  remedy: 'Flash ESC firmware that sends rpm back, or switch the setting off.',
  source: 'arming flags of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    bidirectional: no
setup:
  bidirectional: «yes»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    bidirectional: yes
setup:
  bidirectional: yes
`,
};
