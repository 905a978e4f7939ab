/** One parcel arrives long after the rest. */

import { check } from '../check';

export default check({
  id: 'lead-time-blocks',
  group: 'order',
  title: 'One parcel holds up the bench',
  severity: 'information',
  needs: { order: 'worked.order' },
  judge({ order }) {
    const { needs, order: own } = order.value;
    const days = needs.flatMap((need) => {
      const shop = own.shops.open.find((one) => one.shop.id === need.from?.value);
      return need.need > 0 && shop?.days !== undefined ? [{ need, days: shop.days }] : [];
    });
    const last = Math.max(...days.map((one) => one.days));
    const late = days.filter((one) => one.days === last);
    const rest = days.filter((one) => one.days < last).map((one) => one.days);
    const wait = last - Math.max(...rest);
    if (rest.length === 0 || wait < 7) return undefined;
    return {
      at: late[0]!.need.from,
      message: `${late.map((one) => `\`${one.need.part}\``).join(', ')} from ${late[0]!.need.from!.value} come about ${wait} days after everything else. Order there first; customs and weekends make a week more or less.`,
    };
  },
});

export const explanation = {
  why: 'Until it is there nothing can be soldered or flown.',
  remedy: 'Order that one first, or take the part from a nearer shop.',
  source: 'a week of difference: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    sold-as: frame-a
    from: pellam
  motors:
    count: 4
    sold-as: motor-a
    from: «tarn»
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    transit-days: 3
    offers:
      frame-a:
        - price: 40
  tarn:
    currency: EUR
    flat: 5
    transit-days: 14
    offers:
      motor-a:
        - price: 16
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    sold-as: frame-a
    from: pellam
  motors:
    count: 4
    sold-as: motor-a
    from: tarn
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    transit-days: 3
    offers:
      frame-a:
        - price: 40
  tarn:
    currency: EUR
    flat: 5
    transit-days: 8
    offers:
      motor-a:
        - price: 16
`,
};
