/** The frequency the transmitter sends on is outside the band of its antenna. */
import { channelOf } from '../../plan/video-channels';
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { megahertz } from '../words';

export default check({
  id: 'antenna-off-band',
  group: 'video',
  title: 'Video antenna is made for another band',
  severity: 'error',
  needs: { band: 'video-antenna.band', channel: 'video-transmitter.channel' },
  when: (craft) => {
    const channel = craft.roles['video-transmitter']?.channel;
    return channel === undefined || channelOf(channel.value).is === 'known';
  },
  judge({ band, channel }) {
    const at = channelOf(channel.value);
    if (at.is !== 'known') return undefined;
    const hertz = at.megahertz * 1e6;
    if (!fallsShort(hertz, band.value.least) && !exceeds(hertz, band.value.most)) return undefined;
    const set = /Hz/i.test(channel.text) ? channel.text : `${channel.text}, ${megahertz(hertz)}`;
    const off = Math.min(Math.abs(hertz / band.value.least - 1), Math.abs(hertz / band.value.most - 1));
    return {
      at: band,
      with: [{ fact: channel, says: `${channel.text} is ${megahertz(hertz)}` }],
      severity: exceeds(off, 0.03) ? 'error' : 'warning',
      message: `The antenna is made for ${band.text}; the transmitter is set to ${set}. It sends its power back. Use an antenna for that frequency, or another channel.`,
    };
  },
});

export const explanation = {
  why: 'An antenna off its band sends back what it is given: the transmitter heats and the range is gone.',
  remedy: 'Take an antenna for the frequency.',
  source: 'common practice; within 3 % of its band an antenna still radiates',
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    channel: R1
  video-antenna:
    band: «2.4 GHz - 2.5 GHz»
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    channel: R1
  video-antenna:
    band: 5.6 GHz - 6.0 GHz
`,
};
