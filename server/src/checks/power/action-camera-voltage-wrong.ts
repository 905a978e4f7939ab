/** The action camera gets more or fewer volts than it takes, as it is wired. */

import { check } from '../check';
import { fedVerdict, isWired } from '../fed';

export default check({
  id: 'action-camera-voltage-wrong',
  group: 'power',
  title: 'Action camera gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { supply: 'action-camera.supply' },
  may: {
    cells: 'pack.cells',
    full: 'worked.pack-full-voltage',
    chemistry: 'pack.chemistry',
    landing: 'pack.landing-voltage',
  },
  when: isWired('action-camera'),
  judge: (facts, craft, pack) => fedVerdict('action camera', 'action-camera', facts, craft, pack),
});

export const explanation = {
  why: 'A camera without its own battery dies on too many volts and restarts on too few.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Example
parts:
  action-camera:
    supply: 5 V
wiring:
  action-camera:
    power: «9V»
`,
  good: `
dryfit: build
name: Example
parts:
  action-camera:
    supply: 5 V - 16 V
wiring:
  action-camera:
    power: 5V
`,
};
