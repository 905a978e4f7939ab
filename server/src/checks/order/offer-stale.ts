/** A price was seen long before the newest one in the shops files. */

import { daysBetween } from '../../plan/order-shops';
import { check } from '../check';

export default check({
  id: 'offer-stale',
  group: 'order',
  title: 'Price seen long ago',
  severity: 'information',
  needs: { order: 'worked.order' },
  judge({ order }) {
    const { needs, offersOf, order: own } = order.value;
    const { newest } = own.shops;
    return needs.flatMap((need) => {
      const offers = offersOf(need.part).filter(({ shop }) => !need.from || shop.shop.id === need.from.value);
      // The youngest of its prices counts: nobody has to buy at the old one.
      const seen = offers
        .flatMap(({ offer }) => offer.facts.seen ?? [])
        .sort((a, b) => (a.value < b.value ? 1 : -1))[0];
      if (!seen || newest === undefined || need.need === 0) return [];
      const days = daysBetween(seen.value, newest);
      if (days <= 14) return [];
      return [
        {
          at: need.from ?? need.at,
          with: [{ fact: seen, says: `seen ${seen.value}` }],
          severity: days > 45 ? ('warning' as const) : ('information' as const),
          message: `The price of \`${need.part}\` was seen ${days} days before the newest one in the shops files. Look again, and write the new date.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Prices and stock move; a plan made on old ones is a guess.',
  remedy: 'Look again and write the new date.',
  source:
    '14 and 45 days: common practice. Measured from the newest date in the files, so that it says the same tomorrow',
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
rates-seen: 2026-11-20
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      motor-a:
        - price: 20
          seen: 2026-10-20
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
rates-seen: 2026-11-20
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      motor-a:
        - price: 20
          seen: 2026-11-10
`,
};
