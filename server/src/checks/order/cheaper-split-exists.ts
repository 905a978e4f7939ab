/** The same parts cost less when a line is bought elsewhere. */

import { worked } from '../../plan/worked';
import { money, plainMoney } from '../../text/notation/money';
import { check } from '../check';
import { shopsOf } from '../order-words';

export default check({
  id: 'cheaper-split-exists',
  group: 'order',
  title: 'A cheaper split is at hand',
  severity: 'information',
  needs: { order: 'worked.order' },
  when: (craft, pack) => worked(craft, pack, 'worked.order')?.value.said?.priced !== undefined,
  judge({ order }) {
    const { said, order: own, needs } = order.value;
    if (!said?.priced || said.eachCheapest || !said.better) return undefined;
    const saved = said.priced.total - said.better.total;
    if (saved <= Math.max(said.priced.total * 0.02, 300)) return undefined;
    return {
      at: needs.find((need) => need.from)?.from,
      message: `These parts as bought here cost ${money(said.priced.total, own.currency)} with shipping; ${plainMoney(said.better.total)} is possible from ${shopsOf(said.better.shops.length)}. \`dryfit order\` finds the cheapest split and proves it.`,
    };
  },
});

export const explanation = {
  why: 'Where each part is bought decides the shipping.',
  remedy: 'Move the lines that are named, or run `dryfit order` for the cheapest split of all.',
  source: 'found by moving single lines and leaving shops out; the cheapest of all needs the solver',
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
        - price: 21
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
        - price: 16
`,
};
