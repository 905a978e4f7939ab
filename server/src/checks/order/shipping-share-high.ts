/** Shipping takes a large share of the order as the build says it. */

import { worked } from '../../plan/worked';
import { money, plainMoney } from '../../text/notation/money';
import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, percent } from '../words';

export default check({
  id: 'shipping-share-high',
  group: 'order',
  title: 'Shipping eats the order',
  severity: 'information',
  needs: { order: 'worked.order' },
  when: (craft, pack) => worked(craft, pack, 'worked.order')?.value.said?.priced !== undefined,
  judge({ order }) {
    const priced = order.value.said?.priced;
    if (!priced || priced.goods === 0) return undefined;
    const share = priced.shipping / priced.goods;
    const [paid, usual] = apart(percent, share, 0.08);
    if (!exceeds(share, 0.08)) return undefined;
    return {
      at: order.value.needs.find((need) => need.from)?.from,
      severity: exceeds(share, 0.15) ? 'warning' : 'information',
      message: `Shipping is ${paid} of this order: ${plainMoney(priced.shipping)} for goods of ${money(priced.goods, order.value.order.currency)}; ${usual} is the most that is usual. Buy from fewer shops or order with a friend; \`dryfit order\` finds the cheapest split.`,
    };
  },
});

export const explanation = {
  why: 'Every parcel costs, and what is paid for sending buys nothing that flies.',
  remedy: 'Buy from fewer shops, reach a free-shipping value, or order together with a friend.',
  source: 'limits of 8 and 15 %: common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
    sold-as: motor-a
    from: «pellam»
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 14.00
    offers:
      motor-a:
        - price: 20.00
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
    sold-as: motor-a
    from: pellam
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5.00
    offers:
      motor-a:
        - price: 20.00
`,
};
