/** The camera gets more or fewer volts than it takes, as it is wired. */

import { check } from '../check';
import { fedVerdict, isWired } from '../fed';

export default check({
  id: 'camera-voltage-wrong',
  group: 'power',
  title: 'Camera gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { supply: 'camera.supply' },
  may: {
    cells: 'pack.cells',
    full: 'worked.pack-full-voltage',
    chemistry: 'pack.chemistry',
    landing: 'pack.landing-voltage',
  },
  when: isWired('camera'),
  judge: (facts, craft, pack) => fedVerdict('camera', 'camera', facts, craft, pack),
});

export const explanation = {
  why: 'Most small cameras take 5 V only; more destroys them at plug-in, and less gives no picture.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Example
parts:
  camera:
    supply: 5 V
wiring:
  camera:
    power: «9V»
`,
  good: `
dryfit: build
name: Example
parts:
  camera:
    supply: 5 V - 26 V
wiring:
  camera:
    power: 5V
`,
};
