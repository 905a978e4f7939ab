/** A socket lists more contacts than it has, or one function on two contacts that cannot share. */
import type { Craft } from '../../build/craft';
import type { Fact, Table } from '../../build/fact';
import type { Verdict } from '../check';
import { check } from '../check';

interface Listed {
  readonly pins?: Table<Fact<string>>;
  readonly contacts?: Fact<number>;
}

function socketsOf(craft: Craft): readonly Listed[] {
  const { esc, 'flight-controller': controller, 'video-transmitter': unit, camera, receiver, gps } = craft.roles;
  return [
    esc?.['controller-socket'],
    controller?.['esc-socket'],
    controller?.['video-socket'],
    unit?.socket,
    camera?.socket,
    receiver?.socket,
    gps?.socket,
  ].flatMap((socket) => (socket ? [socket] : []));
}

export default check({
  id: 'pin-list-too-long',
  group: 'harness',
  title: 'Pin list does not fit its socket',
  severity: 'error',
  needs: {},
  may: {
    esc: 'esc.controller-socket.pins',
    controller: 'flight-controller.esc-socket.pins',
    video: 'flight-controller.video-socket.pins',
    unit: 'video-transmitter.socket.pins',
    camera: 'camera.socket.pins',
    receiver: 'receiver.socket.pins',
    gps: 'gps.socket.pins',
  },
  when: (craft) => socketsOf(craft).some(({ pins }) => pins !== undefined),
  judge(_, craft) {
    return socketsOf(craft).flatMap(({ pins, contacts }): Verdict[] => {
      if (!pins) return [];
      const found: Verdict[] = [];
      const most = Math.max(...[...pins.entries.keys()].map(Number));
      if (contacts && most > contacts.value)
        found.push({
          at: pins,
          with: [{ fact: contacts, says: `the socket has ${contacts.value}` }],
          apart: `${pins.at.path} count`,
          message: `The list goes up to contact ${most}; the socket has ${contacts.value}. Count them again.`,
        });
      const seen = new Map<string, Fact<string>>();
      for (const [contact, role] of pins.entries) {
        const before = seen.get(role.value);
        if (before && !['GND', 'VBAT', 'NC', '5V', '9V', '12V', '3V3'].includes(role.value))
          found.push({
            at: role,
            with: [{ fact: before, says: `${role.value} for the first time` }],
            apart: `${pins.at.path} ${contact}`,
            message: `${role.value} is on two contacts of this socket; only supply, ground and unused contacts occur twice. Look at the drawing again.`,
          });
        seen.set(role.value, role);
      }
      return found;
    });
  },
});

export const explanation = {
  why: 'A pin list with a slip in it sends the whole cable wrong.',
  remedy: 'Count the contacts of the socket again and look at the drawing.',
  source: 'common practice: only supply, ground and unused contacts occur twice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    controller-socket:
      pins: { 1: VBAT, 2: GND, 3: M1, 4: «M1» }
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    controller-socket:
      contacts: 4
      pins: { 1: VBAT, 2: GND, 3: GND, 4: M1 }
`,
};
