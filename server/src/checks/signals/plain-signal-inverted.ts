/** A plain signal on a pad that inverts. */
import { check } from '../check';
import { moveFix, moveWords, wiredPorts } from '../port-words';

export default check({
  id: 'plain-signal-inverted',
  group: 'signals',
  title: 'A plain signal on a pad that inverts',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].some((entry) => entry.serial),
  judge({ ports }) {
    return wiredPorts(ports.value)
      .filter(({ fault }) => fault === 'inverted')
      .map(({ need, said, port }) => ({
        at: said,
        with: port.where
          ? [{ fact: { at: port.where, text: port.name }, says: `${port.name} of the flight controller` }]
          : [],
        message: `The pad of ${port.name} inverts, and ${need.protocol} is not inverted: nothing would be read. ${moveWords(ports.value, need)}`,
        fixes: moveFix(ports.value, need),
      }));
  },
});

export const explanation = {
  why: 'A pad with a hardware inverter turns a plain signal upside down; nothing is read.',
  remedy: 'Use the plain pad of this port or another port.',
  source: 'CRSF description: the airframe side is never inverted; common practice for the others',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F405
    uarts:
      uart1: { pads: rx+tx, inverter: on pad }
      uart2: { pads: rx+tx }
  receiver:
    protocols: CRSF
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
      uart1: { pads: rx+tx, inverter: on pad }
      uart2: { pads: rx+tx }
  receiver:
    protocols: CRSF
wiring:
  receiver:
    serial: uart2
`,
};
