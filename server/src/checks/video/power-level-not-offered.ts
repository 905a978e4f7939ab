/** The radio power to be set is not among the transmitter's levels. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'power-level-not-offered',
  group: 'video',
  title: 'Power level that the transmitter does not have',
  severity: 'warning',
  needs: { level: 'video-transmitter.level', levels: 'video-transmitter.levels' },
  judge({ level, levels }) {
    if (levels.items.some((item) => !exceeds(Math.abs(item.value / level.value - 1), 0.02))) return undefined;
    return {
      at: level,
      with: [{ fact: levels, says: `it has ${levels.text}` }],
      message: `The transmitter has the levels ${levels.text}; ${level.text} is not among them. Choose one of those.`,
      // Only lower ones: more power is the builder's decision.
      fixes: levels.items
        .filter((item) => item.value < level.value)
        .slice(-1)
        .map((item) => write(level, item.text)),
    };
  },
});

export const explanation = {
  why: 'The firmware sets the nearest level it knows, which may be far more than was meant.',
  remedy: 'Choose one of its levels.',
  source: "the maker's list of levels, to 2 % for levels that are said in dBm",
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    level: «400 mW»
    levels: 25 mW, 200 mW, 600 mW
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    level: 600 mW
    levels: 25 mW, 200 mW, 600 mW
`,
};
