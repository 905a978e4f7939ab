/** The part and the shop count its packs differently. */

import { check } from '../check';

export default check({
  id: 'pack-quantity-misread',
  group: 'order',
  title: 'Pack sizes differ',
  severity: 'error',
  needs: { pieces: 'propellers.pieces', order: 'worked.order' },
  judge({ pieces, order }) {
    const { needs, offersOf } = order.value;
    const need = needs.find((one) => one.role === 'propellers');
    const offers = need ? offersOf(need.part) : [];
    const same = offers.some(({ offer }) => offer.pack === pieces.value);
    // Loose pieces say nothing about packs.
    const other = offers.find(({ offer }) => offer.facts.pack && offer.pack > 1 && offer.pack !== pieces.value);
    if (!other || same || offers.some(({ offer }) => offer.pack === 1)) return undefined;
    return {
      at: pieces,
      with: [{ fact: other.offer.facts.pack!, says: `${other.shop.shop.id} sells packs of ${other.offer.pack}` }],
      message: `Here a pack of \`${need!.part}\` holds ${pieces.value}; ${other.shop.shop.id} sells packs of ${other.offer.pack}. One of them is misread: an order counts by the shop's. Look at the listing again.`,
    };
  },
});

export const explanation = {
  why: 'A pack of four read as a pack of eight is half a set short.',
  remedy: 'Look at the listing again and mend the wrong one.',
  source: 'arithmetic; "set of 4", "2 pairs" and "12-pack" are all used',
  bad: `
dryfit: build
name: Example
parts:
  propellers:
    count: 4
    sold-as: prop-a
    pieces: «8»
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      prop-a:
        - pack: 4
          price: 3.60
`,
  good: `
dryfit: build
name: Example
parts:
  propellers:
    count: 4
    sold-as: prop-a
    pieces: 4
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      prop-a:
        - pack: 4
          price: 3.60
`,
};
