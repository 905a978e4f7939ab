/** All regulators together give more than the board allows. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, watts } from '../words';

export default check({
  id: 'regulators-over-total',
  group: 'power',
  title: 'Regulators share a ceiling',
  severity: 'warning',
  needs: { rails: 'worked.rails', total: 'flight-controller.regulators-total' },
  judge({ rails, total }) {
    if (!exceeds(rails.value.watts, total.value)) return undefined;
    const [asked, gives] = apart(watts, rails.value.watts, total.value);
    return {
      at: total,
      message: `All rails together are asked for ${asked}; the board gives ${gives} in total. Feed the largest device from somewhere else.`,
    };
  },
});

export const explanation = {
  why: 'Boards share one inductor or one heat sink: each rail alone is promised, not all at once.',
  remedy: 'Spread the load, or feed the video transmitter from the battery if it takes that.',
  source: 'manuals of published boards, as reported',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      9V:
        current: 3 A
    regulators-total: «15 W»
  video-transmitter:
    draw: 16 W
    supply: 7 V - 26 V
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      9V:
        current: 3 A
    regulators-total: 17 W
  video-transmitter:
    draw: 16 W
    supply: 7 V - 26 V
`,
};
