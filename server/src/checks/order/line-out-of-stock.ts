/** The shop that a part is to come from has too few of it. */

import { check, type Verdict } from '../check';

export default check({
  id: 'line-out-of-stock',
  group: 'order',
  title: 'Not in stock where it is to be bought',
  severity: 'error',
  needs: { order: 'worked.order' },
  judge({ order }) {
    const { needs, offersOf } = order.value;
    return needs.flatMap((need): Verdict[] => {
      const all = offersOf(need.part);
      if (need.need === 0 || all.length === 0) return [];
      const enough = (list: typeof all): boolean =>
        list.some(({ offer }) => offer.stock === undefined) ||
        list.reduce((sum, { offer }) => sum + offer.pack * (offer.stock ?? 0), 0) >= need.need;
      const there = need.from && all.filter(({ shop }) => shop.shop.id === need.from?.value);
      if (there && there.length > 0 && !enough(there)) {
        const others = [
          ...new Set(all.filter(({ shop }) => shop.shop.id !== need.from?.value).map(({ shop }) => shop.shop.id)),
        ];
        return [
          {
            at: need.from,
            with: there.flatMap(({ offer }) =>
              offer.facts.stock ? [{ fact: offer.facts.stock, says: `${offer.facts.stock.text} in stock` }] : [],
            ),
            message: `${need.from?.value} has too few of \`${need.part}\`: ${need.need} are needed. ${others.length > 0 ? `Take it from ${others.join(' or ')}` : 'No other shop has it; wait, or take another part that fits'}.`,
          },
        ];
      }
      if (enough(all)) return [];
      return [
        {
          at: need.at,
          severity: 'warning' as const,
          message: `No shop of this workspace has ${need.need} of \`${need.part}\` in stock. Wait, or take another part that fits: \`dryfit order\` names one.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'The order waits, or comes in two parcels.',
  remedy: 'Take it from another shop, or another part that fits: `dryfit order` names both.',
  source: 'stock as the shops file says it',
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
    flat: 5
    offers:
      motor-a:
        - price: 20
          stock: 3
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
    flat: 5
    offers:
      motor-a:
        - price: 20
          stock: 4
`,
};
