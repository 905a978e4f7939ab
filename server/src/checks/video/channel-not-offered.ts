/** The channel to be set is not among those the transmitter can be set to. */

import { check } from '../check';

export default check({
  id: 'channel-not-offered',
  group: 'video',
  title: 'Channel that the transmitter does not have',
  severity: 'error',
  needs: { channel: 'video-transmitter.channel', offered: 'video-transmitter.channels' },
  judge({ channel, offered }) {
    const wanted = channel.value.trim().toUpperCase();
    const list = offered.items.map((item) => item.value.trim().toUpperCase());
    if (list.includes(wanted) || list.includes(wanted[0]!)) return undefined;
    // A frequency may belong to a band that is named by its letter.
    if (/HZ$/.test(wanted)) return undefined;
    return {
      at: channel,
      with: [{ fact: offered, says: `it has ${offered.text}` }],
      message: `The transmitter can be set to ${offered.text}; ${channel.text} is not among them. It would stay on another channel. Choose one of those.`,
    };
  },
});

export const explanation = {
  why: "The transmitter stays on another channel, perhaps on somebody else's.",
  remedy: 'Choose one of its channels.',
  source: "the maker's list of bands and channels",
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    channel: «R3»
    channels: A, B, F
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    channel: F4
    channels: A, B, F
`,
};
