/** Prices with tax stand beside prices without, or in a currency without a rate. */

import { check } from '../check';

export default check({
  id: 'currency-or-tax-basis-mixed',
  group: 'order',
  title: "Prices that can't be compared",
  severity: 'warning',
  needs: { order: 'worked.order' },
  judge({ order }) {
    const { needs, order: own } = order.value;
    const bought = needs.filter((need) => need.need > 0 && need.from);
    const lost = bought.find((need) => own.shops.unrated.some((shop) => shop.id === need.from?.value));
    if (lost)
      return {
        at: lost.from,
        message: `Prices of ${lost.from!.value} are in a currency without a rate to ${own.currency}, so they are left out. Add the rate under \`rates:\`, with \`rates-seen\`.`,
      };
    const shopOf = (need: (typeof bought)[number]) => own.shops.open.find((one) => one.shop.id === need.from?.value);
    const bare = bought.find((need) => {
      const shop = shopOf(need);
      return shop?.facts['tax-included']?.value === false && shop.shop.border.tax === 0;
    });
    const taxed = bought.find((need) => shopOf(need)?.facts['tax-included']?.value === true);
    if (!bare || !taxed) return undefined;
    return {
      at: bare.from,
      with: [{ fact: shopOf(bare)!.facts['tax-included']!, says: 'its prices are without tax' }],
      message: `Prices of ${bare.from!.value} are without tax, those of ${taxed.from!.value} with it, and no tax is known for the former. Add its region and the tax under \`customs:\`.`,
    };
  },
});

export const explanation = {
  why: 'The shop that looks cheaper may be the dearer one.',
  remedy: 'Add the tax under `customs:` or the rate under `rates:`, with its date.',
  source: 'arithmetic',
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
currency: EUR
shops:
  pellam:
    currency: EUR
    flat: 5
    tax-included: yes
    offers:
      frame-a:
        - price: 40
  tarn:
    currency: EUR
    flat: 5
    tax-included: no
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
currency: EUR
shops:
  pellam:
    currency: EUR
    flat: 5
    tax-included: yes
    offers:
      frame-a:
        - price: 40
  tarn:
    currency: EUR
    flat: 5
    tax-included: yes
    offers:
      motor-a:
        - price: 16
`,
};
