/** The frame has no place for an antenna with this plug. */
import { adaptersOf } from '../../plan/adapters';
import { plugFamily } from '../../plan/radio-plugs';
import { check } from '../check';

export default check({
  id: 'antenna-without-mount',
  group: 'mechanical',
  title: 'Nothing holds the video antenna',
  severity: 'warning',
  needs: { plug: 'video-antenna.plug', places: 'frame.antenna-mounts' },
  when: (craft) => craft.roles['video-antenna']?.plug?.value !== 'soldered',
  judge({ plug, places }, craft) {
    const has = places.items.map((item) => item.value);
    const threaded = /SMA$/.test(plugFamily(plug.value) ?? '');
    const wanted: readonly string[] = threaded ? ['sma-hole', 'printed'] : ['tube', 'tie', 'printed'];
    if (has.some((place) => wanted.includes(place)) || adaptersOf(craft, 'printed mount').length > 0) return undefined;
    return {
      at: plug,
      with: [{ fact: places, says: `the frame has ${places.text}` }],
      message: `An antenna with ${plug.text} wants ${threaded ? 'a hole of 6.5 mm or a printed holder' : 'a tube, a tie or a printed holder'}; the frame has ${places.text}. Add a printed holder (an adapter of type \`printed mount\`), or take another antenna.`,
    };
  },
});

export const explanation = {
  why: 'An antenna that hangs on its plug is torn off in the first crash, and then the transmitter sends into the open.',
  remedy: 'Add a printed holder, or take an antenna for the place the frame has.',
  source: 'common practice: threaded jacks need a hole of about 6.5 mm, thin coaxial leads a tube or tie',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    antenna-mounts: tube
  video-antenna:
    plug: «SMA plug»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    antenna-mounts: tube
  video-antenna:
    plug: MMCX
`,
};
