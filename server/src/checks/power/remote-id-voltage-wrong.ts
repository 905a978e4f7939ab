/** The identification module gets more or fewer volts than it takes, as it is wired. */

import { check } from '../check';
import { fedVerdict, isWired } from '../fed';

export default check({
  id: 'remote-id-voltage-wrong',
  group: 'power',
  title: 'Identification module gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { supply: 'remote-id.supply' },
  may: {
    cells: 'pack.cells',
    full: 'worked.pack-full-voltage',
    chemistry: 'pack.chemistry',
    landing: 'pack.landing-voltage',
  },
  when: isWired('remote-id'),
  judge: (facts, craft, pack) => fedVerdict('identification module', 'remote-id', facts, craft, pack),
});

export const explanation = {
  why: 'The module dies on too many volts and does not start on too few.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Example
parts:
  remote-id:
    supply: 5 V
wiring:
  remote-id:
    power: «9V»
`,
  good: `
dryfit: build
name: Example
parts:
  remote-id:
    supply: 5 V - 16 V
wiring:
  remote-id:
    power: 5V
`,
};
