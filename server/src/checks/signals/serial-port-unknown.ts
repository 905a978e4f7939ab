/** The file wires a device to a serial port that the board does not bring out. */
import { nameOf } from '../../plan/ports';
import { check } from '../check';
import { moveFix, moveWords } from '../port-words';

export default check({
  id: 'serial-port-unknown',
  group: 'signals',
  title: 'A serial port that the board does not have',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].some((entry) => entry.serial),
  judge({ ports }) {
    const plan = ports.value;
    const known = plan.ports.map((port) => port.name);
    return plan.needs.flatMap((need) =>
      need.said && !known.includes(nameOf(need.said.value))
        ? [
            {
              at: need.said,
              with: [{ fact: ports, says: `the board has ${known.join(', ')}` }],
              message: `The flight controller brings out ${known.join(', ')}; there is no ${nameOf(need.said.value)}. ${moveWords(plan, need)}`,
              fixes: moveFix(plan, need),
            },
          ]
        : [],
    );
  },
});

export const explanation = {
  why: 'A port that is on the chip but not on the board has no pad to solder to.',
  remedy: 'Use a port that the board brings out, or add the port to the board if it was left out.',
  source: 'common practice: the count on the chip is only an upper bound',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    uarts:
      uart1: { pads: rx+tx }
  gps:
    protocol: UBX
wiring:
  gps:
    serial: «uart7»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    uarts:
      uart1: { pads: rx+tx }
  gps:
    protocol: UBX
wiring:
  gps:
    serial: uart1
`,
};
