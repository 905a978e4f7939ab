/** The cheapest goods alone cost more than the budget. */

import { money } from '../../text/notation/money';
import { check } from '../check';

export default check({
  id: 'budget-exceeded',
  group: 'order',
  title: 'Over budget',
  severity: 'warning',
  needs: { budget: 'build.budget', order: 'worked.order' },
  when: (craft) => craft.said.budget !== undefined,
  judge({ budget, order }) {
    const { least, order: own } = order.value;
    // Amounts in two currencies are compared by `dryfit order`, with the rates of the file.
    if (budget.value.currency !== own.currency || least <= budget.value.cents) return undefined;
    const missing = own.unoffered.length;
    return {
      at: budget,
      message: `The goods alone cost at least ${money(least, own.currency)}, each part where it is cheapest and shipping not counted${missing > 0 ? `, and ${missing} parts have no price yet` : ''}; the budget is ${budget.text}. Take cheaper parts, mark what you own, or raise it; \`dryfit order\` tells the exact sum.`,
    };
  },
});

export const explanation = {
  why: 'Found at the checkout it costs a part; found here it costs a minute.',
  remedy: 'Take cheaper parts, mark what is owned, or raise the budget.',
  source: 'sum of the lowest prices in the shops files; shipping comes on top',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
    sold-as: motor-a
budget: «70 EUR»
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      motor-a:
        - price: 19.90
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
    sold-as: motor-a
budget: 70 EUR
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      motor-a:
        - price: 15.90
`,
};
