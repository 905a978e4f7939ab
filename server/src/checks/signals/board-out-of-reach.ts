/** A board without USB whose every full serial port is taken. */
import { check } from '../check';

export default check({
  id: 'board-out-of-reach',
  group: 'signals',
  title: 'No way left to set the board up',
  severity: 'error',
  needs: { usb: 'flight-controller.usb', ports: 'worked.ports' },
  judge({ usb, ports }) {
    if (usb.value) return undefined;
    const taken = new Set([...ports.value.taken.values()].map((one) => one.port));
    const free = ports.value.ports.some(
      (port) => !port.soft && port.rx && port.tx && port.reserved === undefined && !taken.has(port.name),
    );
    return free
      ? undefined
      : {
          at: usb,
          with: [{ fact: ports, says: 'every full serial port is taken' }],
          message:
            'The board has no USB and every serial port with both pads is taken: it could never be set up again. Leave one free.',
        };
  },
});

export const explanation = {
  why: 'A board that cannot be reached by USB or by a serial port can never be set up again.',
  remedy: 'Leave one full serial port free, or take a board with USB.',
  source: 'serial documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    usb: «no»
    uarts:
      uart1: { pads: rx+tx }
  receiver:
    protocols: CRSF
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    usb: no
    uarts:
      uart1: { pads: rx+tx }
      uart2: { pads: rx+tx }
  receiver:
    protocols: CRSF
`,
};
