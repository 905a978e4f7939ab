/** A software serial port asked for too much. */
import { check } from '../check';
import { capital, moveFix, moveWords, wiredPorts } from '../port-words';

export default check({
  id: 'soft-serial-too-slow',
  group: 'signals',
  title: 'A software serial port asked for too much',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].some((entry) => entry.serial),
  judge({ ports }) {
    return wiredPorts(ports.value)
      .filter(({ fault }) => fault === 'slow')
      .map(({ need, said, port }) => ({
        at: said,
        with: port.where
          ? [{ fact: { at: port.where, text: port.name }, says: `${port.name} of the flight controller` }]
          : [],
        message: `${capital(need.words)} talks at ${need.baud} baud; a software serial port reaches 19200 and is not allowed for it. ${moveWords(ports.value, need)}`,
        fixes: moveFix(ports.value, need),
      }));
  },
});

export const explanation = {
  why: 'Software serial reaches 19,200 baud and firmware refuses receivers and satellite receivers on it.',
  remedy: 'Use a hardware port; a software port serves one-wire channel control.',
  source: 'serial documentation of widely used open flight firmware: 19,200 baud at most, no receivers',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F722
    uarts:
      uart1: { pads: rx+tx }
    soft-serial: 1
  gps:
    protocol: UBX
wiring:
  gps:
    serial: «soft-serial1»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F722
    uarts:
      uart1: { pads: rx+tx }
    soft-serial: 1
  gps:
    protocol: UBX
wiring:
  gps:
    serial: uart1
`,
};
