/** A serial port without the pad that is needed. */
import { check } from '../check';
import { capital, moveFix, moveWords, wiredPorts } from '../port-words';

export default check({
  id: 'serial-pad-missing',
  group: 'signals',
  title: 'A serial port without the pad that is needed',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].some((entry) => entry.serial),
  judge({ ports }) {
    return wiredPorts(ports.value)
      .filter(({ fault }) => fault === 'rx' || fault === 'tx')
      .map(({ need, said, port }) => ({
        at: said,
        with: port.where
          ? [{ fact: { at: port.where, text: port.name }, says: `${port.name} of the flight controller` }]
          : [],
        message: `${capital(need.words)} needs ${need.rx && need.tx ? 'both pads' : need.rx ? 'an RX pad' : 'a TX pad'} of its port; ${port.name} has ${port.rx ? 'only RX' : port.tx ? 'only TX' : 'no pads'}. ${moveWords(ports.value, need)}`,
        fixes: moveFix(ports.value, need),
      }));
  },
});

export const explanation = {
  why: 'A direction without a pad has nowhere to be soldered; the device stays silent or cannot be set.',
  remedy: 'Use a port with the pads the device needs.',
  source: 'common practice: published boards bring out some ports with one pad only',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F722
    uarts:
      uart1: { pads: rx }
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
    mcu: F722
    uarts:
      uart1: { pads: rx }
      uart2: { pads: rx+tx }
  receiver:
    protocols: CRSF
wiring:
  receiver:
    serial: uart2
`,
};
