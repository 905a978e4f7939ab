/** A device for which no serial port is left, with the devices it competes with. */
import { check } from '../check';
import { capital } from '../port-words';

export default check({
  id: 'serial-ports-too-few',
  group: 'signals',
  title: 'No serial port left for a device',
  severity: 'error',
  needs: { ports: 'worked.ports' },
  when: (craft) =>
    Boolean(craft.roles.receiver || craft.roles.gps || craft.roles['video-transmitter'] || craft.roles['remote-id']),
  judge({ ports }) {
    return ports.value.left.map(({ need, rivals, ports: wanted, ways }) => {
      const others = [...new Set(rivals.map((rival) => rival.words))];
      const why =
        wanted.length === 0 && others.length === 0
          ? 'no port of this board would do'
          : `${others.length > 0 ? `${others.join(' and ')} ${others.length === 1 ? 'takes' : 'take'} ` : ''}${wanted.length > 0 ? wanted.join(' and ') : 'the ports that would do'}`;
      return {
        at: need.because,
        with: [{ fact: ports, says: 'the serial ports of the board' }],
        message: `${capital(need.words)} needs ${need.rx && need.tx ? 'both pads of a serial port' : need.rx ? 'an RX pad' : 'a TX pad'}, and none is left: ${why}. Ways out: ${ways.join('; ')}.`,
        apart: need.device,
      };
    });
  },
});

export const explanation = {
  why: 'A device without a port of its own cannot be used, and this shows only when everything is soldered.',
  remedy: 'Drop or change one of the devices that compete, free a port, or take a board with more ports.',
  source:
    'worked out as a matching of devices and ports; one port serves one function in widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F411
    uarts:
      uart1: { pads: rx+tx }
      uart2: { pads: rx+tx }
  receiver:
    protocols: CRSF
  video-transmitter:
    system: clearview
    control: MSP
  gps:
    protocol: «UBX»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F411
    uarts:
      uart1: { pads: rx+tx }
      uart2: { pads: rx+tx }
      uart6: { pads: rx+tx }
  receiver:
    protocols: CRSF
  video-transmitter:
    system: clearview
    control: MSP
  gps:
    protocol: UBX
`,
};
