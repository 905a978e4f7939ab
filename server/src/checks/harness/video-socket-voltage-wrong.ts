/** The supply contact of the flight controller's video socket is outside what the unit takes. */
import { wiringOf } from '../../plan/feeds';
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { volts } from '../words';

export default check({
  id: 'video-socket-voltage-wrong',
  group: 'harness',
  title: 'Video socket carries the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { socket: 'flight-controller.video-socket.pin-1-voltage', unit: 'video-transmitter.supply' },
  // Said otherwise in the wiring, the supply wire of the lead is not used.
  when: (craft) =>
    craft.roles['video-transmitter']?.socket !== undefined && wiringOf(craft, 'video-transmitter')?.power === undefined,
  judge({ socket, unit }) {
    const says = [{ fact: socket, says: `contact 1 carries ${socket.text}` }];
    // A single figure is a rail with a tenth either way; the unit has to stand its middle.
    const [low, high] =
      socket.value.cells === undefined && !exceeds(socket.value.most / socket.value.least, 1.1 / 0.9)
        ? [(socket.value.least + socket.value.most) / 2, (socket.value.least + socket.value.most) / 2]
        : [socket.value.least, socket.value.most];
    if (exceeds(high, unit.value.most))
      return {
        at: unit,
        with: says,
        message: `The video socket carries up to ${volts(high)}; the unit takes ${unit.text}. It burns when it is plugged in. Set the jumper of the socket, or feed the unit from another rail.`,
      };
    if (fallsShort(low, unit.value.least))
      return {
        at: unit,
        with: says,
        danger: undefined,
        message: `The video socket carries ${volts(low)}; the unit takes ${unit.text}. It stays dark. Set the jumper of the socket, or feed the unit from another rail.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'The ready-made lead plugs in at once, and the unit burns or stays dark at once.',
  remedy: 'Set the jumper of the socket, or cut the supply wire and feed the unit from another rail.',
  source:
    'the open flight controller connector standard: 8 to 26 V on contact 1 of the digital video plug, as reported',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      pin-1-voltage: 9 V
  video-transmitter:
    supply: «10 V - 26 V»
    socket:
      series: SH 1.0
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      pin-1-voltage: 9 V
  video-transmitter:
    supply: 9 V - 26 V
    socket:
      series: SH 1.0
`,
};
