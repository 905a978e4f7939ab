/** Each part stands where it is cheapest, and the order is too dear for it. */

import { worked } from '../../plan/worked';
import { money, plainMoney } from '../../text/notation/money';
import { check } from '../check';
import { shopsOf } from '../order-words';

export default check({
  id: 'cheapest-per-line-misleads',
  group: 'order',
  title: 'Cheapest part by part, too dear together',
  severity: 'information',
  needs: { order: 'worked.order' },
  when: (craft, pack) => worked(craft, pack, 'worked.order')?.value.said?.priced !== undefined,
  judge({ order }) {
    const { said, order: own, needs } = order.value;
    if (!said?.priced || !said.eachCheapest || !said.better) return undefined;
    const saved = said.priced.total - said.better.total;
    return {
      at: needs.find((need) => need.from)?.from,
      message: `Each part is where it is cheapest, yet the order is at least ${money(saved, own.currency)} too dear because of what ${shopsOf(said.priced.shops.length)} take for sending: ${plainMoney(said.priced.total)} instead of ${plainMoney(said.better.total)}. \`dryfit order\` finds the cheapest split.`,
    };
  },
});

export const explanation = {
  why: 'A few cents saved on a part are lost on another parcel.',
  remedy: 'Run `dryfit order` and take its split.',
  source: 'worked out from the shops files',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    sold-as: frame-a
    from: «pellam»
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
        - price: 19.50
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
        - price: 18.50
`,
};
