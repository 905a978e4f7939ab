/** A shop takes no order as small as the one the build gives it. */

import { worked } from '../../plan/worked';
import { money, plainMoney } from '../../text/notation/money';
import { check } from '../check';

export default check({
  id: 'below-minimum-order',
  group: 'order',
  title: 'Order too small for the shop',
  severity: 'error',
  needs: { order: 'worked.order' },
  when: (craft, pack) => worked(craft, pack, 'worked.order')?.value.said !== undefined,
  judge({ order }) {
    const { said, order: own, needs } = order.value;
    return (said?.refused ?? []).flatMap(({ because, shop: index, value }) => {
      if (because !== 'minimum') return [];
      const shop = own.problem.shops[index]!;
      return [
        {
          at: needs.find((need) => need.from?.value === shop.id)?.from,
          apart: shop.id,
          message: `${shop.id} takes no order below ${money(shop.minimum, own.currency)}; this one is ${plainMoney(value)}. Move its lines to another shop, or buy spares there.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'The shop will not take the order.',
  remedy: 'Move the lines to another shop, or buy spares there.',
  source: "the shop's own rule",
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
    minimum: 100
    offers:
      motor-a:
        - price: 20
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
    minimum: 75
    offers:
      motor-a:
        - price: 20
`,
};
