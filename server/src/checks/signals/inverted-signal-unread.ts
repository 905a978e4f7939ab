/** An inverted signal on a port that cannot invert. */
import { check } from '../check';
import { moveFix, wiredPorts } from '../port-words';

export default check({
  id: 'inverted-signal-unread',
  group: 'signals',
  title: 'An inverted signal on a port that cannot invert',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].some((entry) => entry.serial),
  judge({ ports }) {
    return wiredPorts(ports.value)
      .filter(({ fault }) => fault === 'inverter')
      .map(({ need, said, port }) => ({
        at: said,
        with: port.where
          ? [{ fact: { at: port.where, text: port.name }, says: `${port.name} of the flight controller` }]
          : [],
        message: `${need.protocol} is inverted, and ${port.name} of this board cannot invert: nothing would be read. Use a pad with an inverter, the receiver's plain pad, or CRSF if it speaks that.`,
        fixes: moveFix(ports.value, need),
      }));
  },
});

export const explanation = {
  why: 'SBUS and its kin are inverted; a port without an inverter reads nothing and no stick moves.',
  remedy: 'Use the pad marked for it, a receiver pad that is not inverted, or a protocol that is not inverted.',
  source: 'design guidelines of widely used open flight firmware: F4 chips do not invert in the port',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F405
    uarts:
      uart1: { pads: rx+tx }
      uart2: { pads: rx, inverter: on pad }
  receiver:
    protocols: SBUS
wiring:
  receiver:
    serial: «uart1»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F405
    uarts:
      uart1: { pads: rx+tx }
      uart2: { pads: rx, inverter: on pad }
  receiver:
    protocols: SBUS
wiring:
  receiver:
    serial: uart2
`,
};
