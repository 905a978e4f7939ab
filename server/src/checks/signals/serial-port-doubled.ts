/** The file wires two devices to one serial port. */
import { nameOf } from '../../plan/ports';
import { check } from '../check';
import { moveFix, moveWords } from '../port-words';

export default check({
  id: 'serial-port-doubled',
  group: 'signals',
  title: 'Two devices on one serial port',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].filter((entry) => entry.serial).length > 1,
  judge({ ports }) {
    const plan = ports.value;
    const wired = plan.needs.filter((need) => need.said);
    return wired.flatMap((need, i) => {
      const first = wired.slice(0, i).find((other) => nameOf(other.said!.value) === nameOf(need.said!.value));
      return first
        ? [
            {
              at: need.said!,
              with: [{ fact: first.said!, says: `${first.words} is there too` }],
              message: `${nameOf(need.said!.value)} is given to ${first.words} and to ${need.words}. One port serves one device. ${moveWords(plan, need)}`,
              fixes: moveFix(plan, need),
            },
          ]
        : [];
    });
  },
});

export const explanation = {
  why: 'Two devices on one port talk over one another, and firmware gives a port to one function; its two pads cannot serve two devices.',
  remedy: 'Move one of them to a free port.',
  source: 'serial documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    uarts:
      uart1: { pads: rx+tx }
      uart2: { pads: rx+tx }
  receiver:
    protocols: CRSF
  gps:
    protocol: UBX
wiring:
  receiver:
    serial: uart1
  gps:
    serial: «uart1»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    uarts:
      uart1: { pads: rx+tx }
      uart2: { pads: rx+tx }
  receiver:
    protocols: CRSF
  gps:
    protocol: UBX
wiring:
  receiver:
    serial: uart1
  gps:
    serial: uart2
`,
};
