/** Plugged straight, the contacts of the flight controller's video socket and of the unit don't meet their like. */
import { pinMap } from '../../plan/craft-harness';
import { plugTrouble } from '../../plan/device-plug';
import { check } from '../check';

export default check({
  id: 'video-lead-order-differs',
  group: 'harness',
  title: 'Video lead joins unlike contacts',
  severity: 'error',
  danger: 'fire',
  needs: { board: 'flight-controller.video-socket.pins', unit: 'video-transmitter.socket.pins' },
  when: (craft) =>
    craft.roles['flight-controller']?.['video-socket']?.pins !== undefined &&
    craft.roles['video-transmitter']?.socket?.pins !== undefined,
  judge({ board, unit }, craft) {
    const trouble = plugTrouble(
      pinMap(board),
      pinMap(unit),
      craft.roles['video-transmitter']?.socket?.['counted-from']?.value === 'marked pin' &&
        craft.roles['flight-controller']?.['video-socket']?.['counted-from']?.value === 'marked pin',
    );
    if (!trouble) return undefined;
    return {
      at: unit,
      with: [{ fact: board, says: 'the contacts of the flight controller' }],
      severity: trouble.grave && trouble.sure ? 'error' : 'warning',
      danger: trouble.grave ? 'fire' : undefined,
      message: `Plugged straight in, ${trouble.words}.${trouble.sure ? '' : ' That is how the lists read; they do not both say `counted-from: marked pin`.'} Move the contacts of the lead, or use the lead made for this board, and measure before power.`,
    };
  },
});

export const explanation = {
  why: 'Supply on a signal contact destroys the unit, and transmit on transmit gives no picture data.',
  remedy: 'Move the contacts of the lead, or use the lead made for this board.',
  source:
    'pin orders of the open flight controller connector standard, as reported; what each pair does: common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      counted-from: marked pin
      pins: { 1: 9V, 2: GND, 3: TX, 4: RX }
  video-transmitter:
    socket:
      counted-from: marked pin
      «pins»: { 1: RX, 2: TX, 3: GND, 4: 9V }
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      counted-from: marked pin
      pins: { 1: 9V, 2: GND, 3: TX, 4: RX }
  video-transmitter:
    socket:
      counted-from: marked pin
      pins: { 1: 9V, 2: GND, 3: RX, 4: TX }
`,
};
