/** Capacitor legs are to be sleeved and no thin heat-shrink is there. */

import { exceeds } from '../beyond';
import { check } from '../check';

export default check({
  id: 'insulation-missing',
  group: 'assembly',
  title: 'No sleeve for the capacitor legs',
  severity: 'information',
  needs: { capacitor: 'capacitor.capacitance', own: 'bench.tools.heat-shrink' },
  judge({ capacitor, own }) {
    if (own.items.some((item) => !exceeds(item.value, 3.5e-3))) return undefined;
    return {
      at: capacitor,
      with: [{ fact: own, says: `the bench has ${own.text}` }],
      message: `The capacitor's legs need sleeves of 2 to 3 mm, and your bench has ${own.text}. Bare legs above carbon short the battery. Get some.`,
    };
  },
});

export const explanation = {
  why: 'Bare legs above carbon short the battery.',
  remedy: 'Get heat-shrink of 2 to 3 mm; tape unwraps when warm.',
  source: 'common practice: heat-shrink of 3.5 mm at most clings to a leg',
  bad: `
dryfit: build
name: Example
parts:
  capacitor:
    capacitance: «1000 uF»
---
dryfit: bench
tools:
  heat-shrink: 10 mm
`,
  good: `
dryfit: build
name: Example
parts:
  capacitor:
    capacitance: 1000 uF
---
dryfit: bench
tools:
  heat-shrink: 2 mm, 10 mm
`,
};
