/** The wiring speaks of a device that is not among the parts. */

import { check } from '../check';

export default check({
  id: 'wiring-of-absent-part',
  group: 'data',
  title: 'Wiring of a part that is not there',
  severity: 'warning',
  needs: { wiring: 'build.wiring' },
  when: (craft) => craft.said.wiring !== undefined,
  judge({ wiring }, craft) {
    const roles = craft.roles as Readonly<Record<string, unknown>>;
    return [...wiring.entries].flatMap(([device, wires]) => {
      if (roles[device] !== undefined || !wires.where) return [];
      return [
        {
          at: { at: wires.where, text: device },
          apart: device,
          message: `The wiring speaks of a ${device.replaceAll('-', ' ')}; this build has none. Add the part, or take its wiring out.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Either the part was forgotten, or the wiring was left over from another build.',
  remedy: 'Add the part, or take its wiring out.',
  source: 'the parts of the build',
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    band: 2.4 GHz
wiring:
  receiver:
    serial: uart2
  «gps»:
    serial: uart3
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    band: 2.4 GHz
wiring:
  receiver:
    serial: uart2
`,
};
