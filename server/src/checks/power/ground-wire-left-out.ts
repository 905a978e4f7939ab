/** A device is wired without its ground, or with the ground wire left out of its lead. */

import { check, type Verdict } from '../check';

export default check({
  id: 'ground-wire-left-out',
  group: 'power',
  title: 'Device without a ground wire',
  severity: 'error',
  needs: { wiring: 'build.wiring' },
  when: (craft) => craft.said.wiring !== undefined,
  judge({ wiring }) {
    return [...wiring.entries].flatMap(([device, wires]): Verdict[] => {
      const name = device.replaceAll('-', ' ');
      const message = `The ${name} has no ground wire. Its current returns through the signal, and both ends suffer. Lead ground beside the signal.`;
      if (wires.ground?.value === false) return [{ at: wires.ground, apart: device, message }];
      // A lead may carry two grounds; one of them is enough.
      const out = wires['leave-out']?.items.find((item) => item.value === 'GND');
      return out && wires.ground?.value !== true
        ? [
            {
              at: out,
              apart: device,
              severity: 'warning' as const,
              message: `The ground wire of the ${name}'s lead is left out. Unless another ground wire goes there, its current returns through the signal. Write \`ground: yes\` if there is one.`,
            },
          ]
        : [];
    });
  },
});

export const explanation = {
  why: 'Without ground the current returns through the signal or picture wire, which damages both ends.',
  remedy: 'Lead the ground wire beside the signal.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  camera:
    system: analog
wiring:
  camera:
    ground: «no»
`,
  good: `
dryfit: build
name: Example
parts:
  camera:
    system: analog
wiring:
  camera:
    ground: yes
`,
};
