/** Packs are to come from a shop that sends none. */

import { check } from '../check';

export default check({
  id: 'battery-shipping-restricted',
  group: 'order',
  title: "Packs that can't be sent",
  severity: 'warning',
  needs: { order: 'worked.order' },
  judge({ order }) {
    const { needs, order: own } = order.value;
    return needs.flatMap((need) => {
      const shop = own.shops.open.find((one) => one.shop.id === need.from?.value);
      if (need.kind !== 'battery' || need.need === 0 || !shop || shop.shop.sendsBatteries) return [];
      return [
        {
          at: need.from,
          with: [{ fact: shop.facts['no-batteries']!, says: 'it sends no packs' }],
          message: `${shop.shop.id} sends no packs. Buy \`${need.part}\` from a shop that does, best one near you.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Lithium packs travel as dangerous goods; many shops send none, or none by air.',
  remedy: 'Buy packs from a shop near you.',
  source: "class 9 goods, UN 3480, from memory of the transport rules; the shop's own rule",
  bad: `
dryfit: build
name: Example
packs:
  main:
    count: 2
    sold-as: pack-a
    from: «pellam»
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    no-batteries: yes
    offers:
      pack-a:
        - price: 30
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    count: 2
    sold-as: pack-a
    from: pellam
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    no-batteries: no
    offers:
      pack-a:
        - price: 30
`,
};
