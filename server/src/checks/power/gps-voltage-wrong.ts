/** The satellite receiver gets more or fewer volts than it takes, as it is wired. */

import { check } from '../check';
import { fedVerdict, isWired } from '../fed';

export default check({
  id: 'gps-voltage-wrong',
  group: 'power',
  title: 'Satellite receiver gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { supply: 'gps.supply' },
  may: {
    cells: 'pack.cells',
    full: 'worked.pack-full-voltage',
    chemistry: 'pack.chemistry',
    landing: 'pack.landing-voltage',
  },
  when: isWired('gps'),
  judge: (facts, craft, pack) => fedVerdict('satellite receiver', 'gps', facts, craft, pack),
});

export const explanation = {
  why: 'Too many volts destroy the module; on too few it finds no satellites.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Example
parts:
  gps:
    supply: 5 V
wiring:
  gps:
    power: «9V»
`,
  good: `
dryfit: build
name: Example
parts:
  gps:
    supply: 3.3 V - 5.5 V
wiring:
  gps:
    power: 5V
`,
};
