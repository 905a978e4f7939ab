/** The craft ready to fly is heavier than the goal. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, grams } from '../words';

export default check({
  id: 'heavier-than-goal',
  group: 'mass',
  title: 'Heavier than wanted',
  severity: 'warning',
  needs: { goal: 'goals.weight', weight: 'worked.pack-weight' },
  when: (craft) => craft.said.goals?.weight !== undefined,
  judge({ goal, weight }) {
    const { value, low, high } = weight.value.ready;
    if (!exceeds(high, goal.value)) return undefined;
    const over = exceeds(value, goal.value);
    const [weighs, wanted] = apart(grams, value, goal.value);
    const most = apart(grams, high, goal.value)[0];
    return {
      at: goal,
      with: [{ fact: weight, says: `about ${grams(value)} with this pack` }],
      severity: over ? 'warning' : 'information',
      message: `Ready to fly with this pack the craft weighs about ${weighs} (${grams(low)} to ${most}); ${wanted} are wanted. ${over ? 'Save weight, or raise the goal.' : 'It may be just over: weigh the parts that are only estimated.'}`,
    };
  },
});

export const explanation = {
  why: 'The goal was written down for a reason.',
  remedy: 'See on the card which parts weigh most, and weigh what was only estimated.',
  source: 'sum of the parts with its range',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    weight: 300 g
packs:
  main:
    cells: 6S
    weight: 200 g
goals:
  weight: «450 g»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    weight: 300 g
packs:
  main:
    cells: 6S
    weight: 200 g
goals:
  weight: 540 g
`,
};
