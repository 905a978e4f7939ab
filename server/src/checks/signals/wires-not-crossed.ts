/** TX of the device is wired to TX of the flight controller, on a link that talks both ways. */
import { receiverWays } from '../../plan/serial-needs';
import { check } from '../check';

export default check({
  id: 'wires-not-crossed',
  group: 'signals',
  title: 'TX meets TX',
  severity: 'error',
  needs: { wiring: 'build.wiring' },
  judge({ wiring }, craft) {
    return [...wiring.entries].flatMap(([device, entry]) => {
      const protocol = craft.roles.receiver?.protocol ?? craft.roles.receiver?.protocols?.items[0];
      const way = protocol && receiverWays[protocol.value];
      const oneWire =
        (device === 'receiver' && way !== undefined && !(way.rx && way.tx) && way.tx) ||
        (device === 'video-transmitter' && craft.roles['video-transmitter']?.control?.value !== 'MSP');
      const pad = entry.tx;
      if (!pad) return [];
      if (!oneWire && pad.value === 'tx')
        return [
          {
            at: pad,
            message: `The TX wire of the ${device.replaceAll('-', ' ')} goes to a TX pad: both would send and neither hear. Solder it to RX.`,
            fixes: [{ title: 'Write `rx`', edits: [{ file: pad.at.file, span: pad.at.span, text: 'rx' }] }],
          },
        ];
      if (oneWire && pad.value === 'rx')
        return [
          {
            at: pad,
            severity: 'warning' as const,
            message: `The one wire of the ${device.replaceAll('-', ' ')} carries both directions and belongs on a TX pad; on RX it can only be listened to. Solder it to TX.`,
            fixes: [{ title: 'Write `tx`', edits: [{ file: pad.at.file, span: pad.at.span, text: 'tx' }] }],
          },
        ];
      return [];
    });
  },
});

export const explanation = {
  why: 'On a link with two wires each side listens on RX to what the other sends on TX; joined like to like, both talk and nobody hears.',
  remedy: 'Cross the two wires: TX of the device to RX of the flight controller.',
  source: 'common practice; open autopilot connector standard on crossing',
  bad: `
dryfit: build
name: Example
parts:
  gps:
    protocol: UBX
wiring:
  gps:
    tx: «tx»
`,
  good: `
dryfit: build
name: Example
parts:
  gps:
    protocol: UBX
wiring:
  gps:
    tx: rx
`,
};
