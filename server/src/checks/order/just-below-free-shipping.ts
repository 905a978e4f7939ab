/** The order is a little short of what a shop sends free. */

import { worked } from '../../plan/worked';
import { money, plainMoney } from '../../text/notation/money';
import { check } from '../check';

export default check({
  id: 'just-below-free-shipping',
  group: 'order',
  title: 'Just short of free shipping',
  severity: 'information',
  needs: { order: 'worked.order' },
  when: (craft, pack) => worked(craft, pack, 'worked.order')?.value.said?.priced !== undefined,
  judge({ order }) {
    const { said, order: own, needs } = order.value;
    return (said?.priced?.shops ?? []).flatMap((one) => {
      const shop = own.problem.shops[one.shop]!;
      const short = (shop.freeOver ?? 0) - one.goods;
      if (short <= 0 || short >= one.shipping) return [];
      return [
        {
          at: needs.find((need) => need.from?.value === shop.id)?.from,
          apart: shop.id,
          message: `The order at ${shop.id} is ${plainMoney(short)} short of free shipping, which costs ${money(one.shipping, own.currency)}. A spare you want anyway for that much costs nothing more; add it, or leave it.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'A spare that is wanted anyway may cost less than the shipping it saves.',
  remedy: "Add a spare that you will need, such as propellers; add nothing you don't want.",
  source: 'worked out from the shops files',
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
    flat: 6
    free-over: 83
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
    flat: 6
    free-over: 90
    offers:
      motor-a:
        - price: 20
`,
};
