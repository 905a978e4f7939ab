/** A logged flight used more than the capacity of the pack. */

import { exceeds } from '../beyond';
import { check } from '../check';

export default check({
  id: 'logged-charge-above-capacity',
  group: 'propulsion',
  title: 'More charged back than the pack holds',
  severity: 'warning',
  needs: { used: 'flight.logged.used', capacity: 'pack.capacity' },
  when: (craft, pack) =>
    craft.said.flight?.logged?.used !== undefined &&
    (craft.said.flight.pack?.value ?? craft.packs[0]?.name) === pack?.name,
  judge({ used, capacity }) {
    if (!exceeds(used.value, capacity.value * 1.02)) return undefined;
    return {
      with: [{ fact: capacity, says: `it holds ${capacity.text}` }],
      message: `${used.text} were charged back into a pack of ${capacity.text}. It was flown below empty, or the figure belongs to another pack. Land earlier, or correct it.`,
    };
  },
});

export const explanation = {
  why: 'Either the pack was flown below empty, which ruins it, or the figure belongs to another pack.',
  remedy: 'Land earlier, or correct the figure.',
  source: 'arithmetic; 2 % of leeway for what a charger measures',
  bad: `
dryfit: build
name: Example
packs:
  main:
    capacity: 1300 mAh
flight:
  logged:
    used: «1400 mAh»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    capacity: 1300 mAh
flight:
  logged:
    used: 1050 mAh
`,
};
