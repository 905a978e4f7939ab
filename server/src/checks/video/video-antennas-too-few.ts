/** The transmitter needs more antennas than are listed. */

import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'video-antennas-too-few',
  group: 'video',
  title: 'Fewer antennas than the transmitter has plugs',
  severity: 'error',
  needs: { plugs: 'video-transmitter.antennas' },
  may: { count: 'video-antenna.count', plug: 'video-antenna.plug' },
  when: (craft) => craft.roles['video-antenna'] !== undefined,
  judge({ plugs, count }, craft) {
    const antenna = craft.roles['video-antenna'];
    const has = count?.value ?? 1;
    if (!antenna || has >= plugs.value) return undefined;
    return {
      at: count ?? plugs,
      with: count ? [{ fact: plugs, says: `the transmitter has ${plugs.value}` }] : [],
      message: `The transmitter has ${plugs.value} antenna plugs; ${has === 1 ? 'one antenna is' : `${has} antennas are`} listed. An output without antenna heats itself. Write \`count: ${plugs.value}\` for the antennas, or add them.`,
      fixes: count ? [write(count, String(plugs.value))] : [],
    };
  },
});

export const explanation = {
  why: 'An output without an antenna heats itself, and one of two paths is missing.',
  remedy: 'Add the missing antennas.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    antennas: 2
  video-antenna:
    plug: U.FL
    count: «1»
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    antennas: 2
  video-antenna:
    plug: U.FL
    count: 2
`,
};
