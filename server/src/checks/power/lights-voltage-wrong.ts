/** The light strip gets more or fewer volts than it takes, as it is wired. */

import { check } from '../check';
import { fedVerdict, isWired } from '../fed';

export default check({
  id: 'lights-voltage-wrong',
  group: 'power',
  title: 'Light strip gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { supply: 'lights.supply' },
  may: {
    cells: 'pack.cells',
    full: 'worked.pack-full-voltage',
    chemistry: 'pack.chemistry',
    landing: 'pack.landing-voltage',
  },
  when: isWired('lights'),
  judge: (facts, craft, pack) => fedVerdict('light strip', 'lights', facts, craft, pack),
});

export const explanation = {
  why: 'LEDs for 5 V burn at once on more, and stay dark or red on less.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Example
parts:
  lights:
    supply: 5 V
wiring:
  lights:
    power: «9V»
`,
  good: `
dryfit: build
name: Example
parts:
  lights:
    supply: 5 V - 16 V
wiring:
  lights:
    power: 5V
`,
};
