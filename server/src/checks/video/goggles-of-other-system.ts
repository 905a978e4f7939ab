/** The goggles on the bench don't receive the craft's video system. */
import { check } from '../check';
import { sameFamily } from '../families';

export default check({
  id: 'goggles-of-other-system',
  group: 'video',
  title: 'Goggles do not receive this picture',
  severity: 'error',
  needs: { transmitter: 'video-transmitter.system', goggles: 'bench.goggles.systems' },
  judge({ transmitter, goggles }) {
    if (goggles.items.some((item) => sameFamily(item.value, transmitter.value))) return undefined;
    return {
      with: [{ fact: goggles, says: `the goggles receive ${goggles.text}` }],
      message: `The video transmitter is ${transmitter.text}; your goggles receive ${goggles.text}. There would be no picture. Use a unit of a system they receive, or add a receiver to the goggles.`,
    };
  },
});

export const explanation = {
  why: 'Without a picture the craft cannot be flown.',
  remedy: 'Take a video transmitter of a system your goggles receive, or add a receiver to the goggles.',
  source: 'common practice: the family is a word of your own files, the same on both ends',
  bad: `
dryfit: build
name: Analog craft, digital goggles
parts:
  video-transmitter:
    system: «analog»
---
dryfit: bench
goggles:
  systems: veloview
`,
  good: `
dryfit: build
name: Goggles with both
parts:
  video-transmitter:
    system: analog
---
dryfit: bench
goggles:
  systems: veloview, analog
`,
};
