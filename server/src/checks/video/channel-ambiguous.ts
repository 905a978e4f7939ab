/** Two contradicting tables exist for the band of this channel. */
import { channelOf } from '../../plan/video-channels';
import { check } from '../check';

export default check({
  id: 'channel-ambiguous',
  group: 'video',
  title: 'Channel can mean two frequencies',
  severity: 'warning',
  needs: { channel: 'video-transmitter.channel' },
  when: (craft) => craft.roles['video-transmitter']?.channel !== undefined,
  judge({ channel }) {
    if (channelOf(channel.value).is !== 'ambiguous') return undefined;
    return {
      message: `Two tables of band L are about, and ${channel.text} is another frequency in each. Write the frequency, as in \`5362 MHz\`.`,
    };
  },
});

export const explanation = {
  why: 'Two pilots who both fly L3 may sit 60 MHz apart, or on top of somebody else.',
  remedy: 'Write the frequency in MHz.',
  source: 'two published tables of a low band, as reported',
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    channel: «L3»
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    channel: 5362 MHz
`,
};
