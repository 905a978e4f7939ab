/** The buzzer gets more or fewer volts than it takes, as it is wired. */

import { check } from '../check';
import { fedVerdict, isWired } from '../fed';

export default check({
  id: 'buzzer-voltage-wrong',
  group: 'power',
  title: 'Buzzer gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { supply: 'buzzer.supply' },
  may: {
    cells: 'pack.cells',
    full: 'worked.pack-full-voltage',
    chemistry: 'pack.chemistry',
    landing: 'pack.landing-voltage',
  },
  when: isWired('buzzer'),
  judge: (facts, craft, pack) => fedVerdict('buzzer', 'buzzer', facts, craft, pack),
});

export const explanation = {
  why: 'A buzzer for 5 V burns on more and is silent on less.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Example
parts:
  buzzer:
    supply: 5 V
wiring:
  buzzer:
    power: «9V»
`,
  good: `
dryfit: build
name: Example
parts:
  buzzer:
    supply: 5 V - 16 V
wiring:
  buzzer:
    power: 5V
`,
};
