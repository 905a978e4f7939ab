/** The video transmitter sends on the band of the radio control. */
import { bandSpan } from '../../plan/link-bands';
import { channelOf } from '../../plan/video-channels';
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { megahertz } from '../words';

export default check({
  id: 'control-and-video-share-band',
  group: 'radio',
  title: 'Control and picture on one band',
  severity: 'warning',
  needs: { channel: 'video-transmitter.channel', receiver: 'receiver.band' },
  when: (craft) => {
    const channel = craft.roles['video-transmitter']?.channel;
    return channel !== undefined && channelOf(channel.value).is === 'known';
  },
  judge({ channel, receiver }) {
    const at = channelOf(channel.value);
    if (at.is !== 'known') return undefined;
    const hertz = at.megahertz * 1e6;
    const shared = receiver.items.filter(
      (item) => exceeds(hertz, bandSpan(item.value)[0] - 50e6) && fallsShort(hertz, bandSpan(item.value)[1] + 50e6),
    );
    if (shared.length === 0 || shared.length < receiver.items.length) return undefined;
    return {
      at: channel,
      with: [{ fact: receiver, says: `control is on ${receiver.text}` }],
      message: `The picture is sent on ${megahertz(hertz)}, in the band of the radio control (${receiver.text}). It drowns the receiver next to it. Use another band for one of them.`,
    };
  },
});

export const explanation = {
  why: "A transmitter a hand's width away drowns the receiver, and the link is lost first.",
  remedy: 'Keep control and picture on different bands.',
  source: 'common practice: 50 MHz on either side',
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    band: 2.4 GHz
  video-transmitter:
    channel: «2414 MHz»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    band: 2.4 GHz
  video-transmitter:
    channel: 5740 MHz
`,
};
