/** The receiver gets more or fewer volts than it takes, as it is wired. */

import { check } from '../check';
import { fedVerdict, isWired } from '../fed';

export default check({
  id: 'receiver-voltage-wrong',
  group: 'power',
  title: 'Receiver gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { supply: 'receiver.supply' },
  may: {
    cells: 'pack.cells',
    full: 'worked.pack-full-voltage',
    chemistry: 'pack.chemistry',
    landing: 'pack.landing-voltage',
  },
  when: isWired('receiver'),
  judge: (facts, craft, pack) => fedVerdict('receiver', 'receiver', facts, craft, pack),
});

export const explanation = {
  why: 'A receiver on too many volts dies at plug-in; on too few it drops the link when the voltage sags.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    supply: 4.5 V - 5.5 V
wiring:
  receiver:
    power: «9V»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    supply: 4.5 V - 8.4 V
wiring:
  receiver:
    power: 5V
`,
};
