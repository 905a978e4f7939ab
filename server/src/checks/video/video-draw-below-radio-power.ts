/** The power a transmitter takes is not above the radio power it sends. */

import { fallsShort } from '../beyond';
import { check } from '../check';

export default check({
  id: 'video-draw-below-radio-power',
  group: 'video',
  title: 'Transmitter takes less than it sends',
  severity: 'warning',
  needs: { draw: 'video-transmitter.draw', level: 'video-transmitter.level' },
  judge({ draw, level }) {
    if (!fallsShort(draw.value, 2 * level.value)) return undefined;
    return {
      at: draw,
      with: [{ fact: level, says: `it sends ${level.text}` }],
      message: `${draw.text} taken for ${level.text} sent would be an efficiency of ${Math.round((level.value / draw.value) * 100)} %; such units reach a quarter. Milliwatts on the box are what it sends. Write what it takes from its supply.`,
    };
  },
});

export const explanation = {
  why: 'A transmitter takes three to ten times what it sends; the rail is planned for too little.',
  remedy: 'Write what it takes from its supply at the chosen level, not the radio power.',
  source: 'conservation of energy; analog units take about four times their radio power and more: common practice',
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    level: 600 mW
    draw: «0.6 W»
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    level: 600 mW
    draw: 5.5 W
`,
};
