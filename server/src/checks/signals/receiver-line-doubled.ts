/** The receiver line of the air unit's lead reaches the flight controller beside a receiver. */
import { check } from '../check';

export default check({
  id: 'receiver-line-doubled',
  group: 'signals',
  title: 'Receiver line of the air unit beside a receiver',
  severity: 'information',
  needs: {
    handset: 'video-transmitter.handset-wire',
    pins: 'flight-controller.video-socket.pins',
    link: 'receiver.link',
  },
  when: (craft) => craft.roles['flight-controller']?.['video-socket'] !== undefined,
  judge({ handset, pins, link }, craft) {
    const there = [...pins.entries.values()].find((pin) => pin.value === 'SBUS');
    const out = craft.said.wiring?.entries.get('video-transmitter')?.['leave-out'];
    if (!handset.value || !there || out?.items.some((pin) => pin.value === 'SBUS')) return undefined;
    return {
      at: handset,
      with: [
        { fact: there, says: 'the SBUS contact of the board' },
        { fact: link, says: 'a receiver of its own' },
      ],
      message:
        'The lead of the air unit brings a receiver line (SBUS) to the flight controller, which has a receiver of its own. On boards that tie both to one port neither is heard. Take that wire out and write `leave-out: SBUS` in the wiring.',
    };
  },
});

export const explanation = {
  why: 'If the board ties that contact to the port of the receiver, two talkers meet on one pin.',
  remedy: 'Take the SBUS wire out of the lead and say so with `leave-out: SBUS`.',
  source: 'manual of a published board, as reported; open flight-controller connector standard for the SBUS contact',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      pins: { 1: 9V, 2: GND, 3: TX, 4: RX, 5: GND, 6: SBUS }
  video-transmitter:
    handset-wire: «yes»
  receiver:
    link: openlink
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      pins: { 1: 9V, 2: GND, 3: TX, 4: RX, 5: GND, 6: SBUS }
  video-transmitter:
    handset-wire: yes
  receiver:
    link: openlink
wiring:
  video-transmitter:
    leave-out: SBUS
`,
};
