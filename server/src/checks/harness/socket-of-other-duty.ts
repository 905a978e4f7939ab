/** Two sockets of one craft have the same series and number of contacts but another voltage on contact 1. */
import { contactsOf } from '../../plan/craft-harness';
import { exceeds } from '../beyond';
import { check } from '../check';

export default check({
  id: 'socket-of-other-duty',
  group: 'harness',
  title: 'Two sockets alike carry different voltages',
  severity: 'warning',
  danger: 'fire',
  needs: {
    video: 'flight-controller.video-socket.pin-1-voltage',
    gps: 'gps.socket.series',
    series: 'flight-controller.video-socket.series',
  },
  when: (craft) =>
    craft.roles.gps?.socket !== undefined && craft.roles['flight-controller']?.['video-socket'] !== undefined,
  judge({ video, gps, series }, craft) {
    const here = contactsOf(craft.roles['flight-controller']?.['video-socket']);
    const there = contactsOf(craft.roles.gps?.socket);
    if (here === undefined || here !== there || gps.value !== series.value || !exceeds(video.value.most, 5.6))
      return undefined;
    return {
      at: gps,
      with: [{ fact: video, says: `contact 1 of the video socket carries ${video.text}` }],
      message: `The plug of the satellite receiver, ${there} contacts of ${gps.text}, also fits the video socket, which carries ${video.text}. Plugged in there it burns. Mark the sockets, or give it another plug.`,
    };
  },
});

export const explanation = {
  why: 'A plug in the wrong one of two equal sockets puts the battery on a 5 V device.',
  remedy: 'Mark the sockets, fill the one that stays empty, or change one of the plugs.',
  source: 'the open flight controller connector standard dropped a six-contact plug for this reason, as reported',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      series: SH 1.0
      contacts: 6
      pin-1-voltage: 9 V
  gps:
    socket:
      series: «SH 1.0»
      contacts: 6
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    video-socket:
      series: SH 1.0
      contacts: 6
      pin-1-voltage: 9 V
  gps:
    socket:
      series: SH 1.0
      contacts: 4
`,
};
