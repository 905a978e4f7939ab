/** The channel with the width of its picture reaches outside the span of the region's profile. */
import { channelOf, channelsInside, halfWidth } from '../../plan/video-channels';
import { check } from '../check';
import { write } from '../edit';
import { dated, hasProfile, profileFor } from '../region';

export default check({
  id: 'channel-outside-profile',
  group: 'rules',
  title: 'Channel outside the span of your profile',
  severity: 'warning',
  needs: { channel: 'video-transmitter.channel' },
  when: (craft) =>
    hasProfile(craft) && channelOf(craft.roles['video-transmitter']?.channel?.value ?? 'R1').is === 'known',
  judge({ channel }, craft) {
    const profile = profileFor(craft);
    const at = channelOf(channel.value);
    if (!profile || at.is !== 'known') return undefined;
    const [least, most] = profile.video.span;
    if (at.megahertz - halfWidth >= least && at.megahertz + halfWidth <= most) return undefined;
    const named = !/Hz/i.test(channel.text);
    const outside = at.megahertz < least || at.megahertz > most;
    const offered = craft.roles['video-transmitter']?.channels?.items.map((item) => item.value.trim().toUpperCase());
    const inside = channelsInside(least, most, at.megahertz).filter(
      (name) => !offered || offered.includes(name) || offered.includes(name[0]!),
    );
    const near = inside.slice(0, 3);
    return {
      at: channel,
      severity: outside ? 'warning' : 'information',
      message: `${channel.text}${named ? ` lies at ${at.megahertz} MHz and` : ''} ${outside ? 'is outside' : `reaches ${halfWidth} MHz to either side`}; your profile has ${least} to ${most} MHz ${profile.video.note}. ${near.length > 0 ? `The nearest channels inside are ${near.join(', ')}.` : 'None of its channels lies inside.'} ${dated(profile)}`,
      fixes: near.map((name) => write(channel, name)),
    };
  },
});

export const explanation = {
  why: 'Outside the span other services send; an analog picture takes about 18 MHz, not just the middle.',
  remedy: 'Choose a channel wholly inside.',
  source: 'dated profiles in plan/rules.ts; channel tables of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
region: EU
parts:
  video-transmitter:
    channel: «E1»
`,
  good: `
dryfit: build
name: Example
region: EU
parts:
  video-transmitter:
    channel: F1
`,
};
