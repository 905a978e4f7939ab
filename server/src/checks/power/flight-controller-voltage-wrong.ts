/** The full pack has more volts than the flight controller's battery input takes. */

import { check } from '../check';
import { packOnInput } from '../pack-on-input';

export default check({
  id: 'flight-controller-voltage-wrong',
  group: 'power',
  title: 'Pack has more volts than the flight controller takes',
  severity: 'error',
  danger: 'fire',
  needs: { cells: 'pack.cells', input: 'flight-controller.input', full: 'worked.pack-full-voltage' },
  may: { chemistry: 'pack.chemistry', landing: 'pack.landing-voltage' },
  // A board that takes 5 V only is fed by a regulator, not by the pack.
  when: (craft) => {
    const input = craft.roles['flight-controller']?.input?.value;
    return !input || input.cells !== undefined || input.most > 6;
  },
  judge: (facts) => packOnInput('flight controller', facts),
});

export const explanation = {
  why: 'The regulators of the flight controller fail at plug-in and pass the battery voltage on to everything behind them.',
  remedy: 'Take a flight controller made for the pack, or a pack with fewer cells.',
  source: 'common practice: full voltage is 4.20 V a cell for LiPo and Li-ion, 4.35 V for high-voltage LiPo',
  bad: `
dryfit: build
name: Six cells into a four cell board
parts:
  flight-controller:
    input: 2S-4S
packs:
  main:
    cells: «6S»
`,
  good: `
dryfit: build
name: Board at its limit
parts:
  flight-controller:
    input: 7 V - 25.2 V
packs:
  main:
    cells: 6S
    chemistry: LiPo
`,
};
