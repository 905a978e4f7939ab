/** The video antenna's plug doesn't mate with the transmitter's, or threads on without the contact it needs. */
import { adaptersOf, joins } from '../../plan/adapters';
import { mating, plugFamily } from '../../plan/radio-plugs';
import { check } from '../check';

export default check({
  id: 'antenna-plug-differs',
  group: 'video',
  title: 'Video antenna does not plug into the transmitter',
  severity: 'error',
  needs: { antenna: 'video-antenna.plug', transmitter: 'video-transmitter.antenna-plug' },
  judge({ antenna, transmitter }, craft) {
    const fit = mating(antenna.value, transmitter.value);
    if (fit === 'mates' || fit === 'soldered') return undefined;
    const here = plugFamily(antenna.value);
    const there = plugFamily(transmitter.value);
    if (
      adaptersOf(craft, 'antenna cable').some((cable) =>
        joins(
          cable,
          (text) => plugFamily(text) === here,
          (text) => plugFamily(text) === there,
        ),
      )
    )
      return undefined;
    const says = [{ fact: transmitter, says: `the transmitter has ${transmitter.text}` }];
    const both = `The antenna has ${antenna.text}, the transmitter ${transmitter.text}`;
    const way = `Use an antenna with the plug for ${transmitter.text}, or a cable between the two (an adapter of type \`antenna cable\`).`;
    if (fit === 'open')
      return {
        at: antenna,
        with: says,
        message: `${both}: the threads go on, but there is no contact in the middle. The transmitter would send into the open and may burn out. ${way}`,
      };
    if (fit === 'crushed')
      return {
        at: antenna,
        with: says,
        message: `${both}: the threads go on, but pin meets pin and crushes the contact. ${way}`,
      };
    if (fit === 'same half')
      return {
        at: antenna,
        with: says,
        message: `${both}: both are the same half, so they do not go together. ${way}`,
      };
    return { at: antenna, with: says, message: `${both}; they do not mate. ${way}` };
  },
});

export const explanation = {
  why: 'A transmitter that sends into an open plug heats its own output stage and has no range.',
  remedy: 'Take an antenna with the matching plug, or a short cable between the two.',
  source: 'plug genders from memory of the SMA and RP-SMA forms; U.FL and MHF4 do not mate: common practice',
  bad: `
dryfit: build
name: Threads that lie
parts:
  video-transmitter:
    antenna-plug: SMA jack
  video-antenna:
    plug: «RP-SMA plug»
`,
  good: `
dryfit: build
name: Cable between
parts:
  video-transmitter:
    antenna-plug: MMCX
  video-antenna:
    plug: SMA plug
  adapters:
    tail:
      type: antenna cable
      takes: MMCX
      gives: SMA jack
`,
};
