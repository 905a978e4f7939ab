/** A serial port that the board uses itself. */
import { check } from '../check';
import { moveFix, moveWords, wiredPorts } from '../port-words';

export default check({
  id: 'serial-port-reserved',
  group: 'signals',
  title: 'A serial port that the board uses itself',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].some((entry) => entry.serial),
  judge({ ports }) {
    return wiredPorts(ports.value)
      .filter(({ fault }) => fault === 'reserved')
      .map(({ need, said, port }) => ({
        at: said,
        with: port.where
          ? [{ fact: { at: port.where, text: port.name }, says: `${port.name} of the flight controller` }]
          : [],
        message: `${port.name} is used by ${port.reserved}; ${need.words} cannot share it. ${moveWords(ports.value, need)}`,
        fixes: moveFix(ports.value, need),
      }));
  },
});

export const explanation = {
  why: 'Two talkers on one port hear garbage; often the port has no pads at all.',
  remedy: 'Use another port, or switch the function on the board off if it allows that.',
  source: 'common practice: published boards tie ports to on-board radio or video',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F722
    uarts:
      uart1: { pads: rx+tx, reserved: the on-board radio }
      uart2: { pads: rx+tx }
  gps:
    protocol: UBX
wiring:
  gps:
    serial: «uart1»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F722
    uarts:
      uart1: { pads: rx+tx, reserved: the on-board radio }
      uart2: { pads: rx+tx }
  gps:
    protocol: UBX
wiring:
  gps:
    serial: uart2
`,
};
