/** The order comes in more parcels than wanted. */

import { worked } from '../../plan/worked';
import { check } from '../check';

export default check({
  id: 'too-many-parcels',
  group: 'order',
  title: 'More parcels than wanted',
  severity: 'warning',
  needs: { parcels: 'goals.parcels', order: 'worked.order' },
  when: (craft, pack) =>
    craft.said.goals?.parcels !== undefined && worked(craft, pack, 'worked.order')?.value.said?.priced !== undefined,
  judge({ parcels, order }) {
    const count = order.value.said?.priced?.parcels.length ?? 0;
    if (count <= parcels.value) return undefined;
    return {
      at: parcels,
      message: `As bought here the order comes in ${count} parcels; ${parcels.value} are wanted at most. \`dryfit order --shops-at-most ${Math.max(1, parcels.value)}\` tells what fewer shops cost.`,
    };
  },
});

export const explanation = {
  why: 'Each parcel is a fee, a day at home, and one more that may be late.',
  remedy: 'Buy from fewer shops: `dryfit order --shops-at-most` tells what that costs.',
  source: "the build's own goal",
  bad: `
dryfit: build
name: Example
goals:
  parcels: «1»
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
    offers:
      frame-a:
        - price: 40
      motor-a:
        - price: 20
  tarn:
    currency: EUR
    flat: 5
    offers:
      motor-a:
        - price: 16
`,
  good: `
dryfit: build
name: Example
goals:
  parcels: 2
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
    offers:
      frame-a:
        - price: 40
      motor-a:
        - price: 20
  tarn:
    currency: EUR
    flat: 5
    offers:
      motor-a:
        - price: 16
`,
};
