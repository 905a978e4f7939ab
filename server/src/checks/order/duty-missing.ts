/** A parcel comes from another customs region and nothing is said of tax, duty and handling. */

import { regionFact } from '../../plan/rules';
import { check } from '../check';

export default check({
  id: 'duty-missing',
  group: 'order',
  title: 'Border costs not counted',
  severity: 'warning',
  needs: { order: 'worked.order' },
  when: (craft) => regionFact(craft) !== undefined,
  judge({ order }, craft) {
    const region = regionFact(craft)!;
    const { needs, order: own } = order.value;
    const seen = new Set<string>();
    return needs.flatMap((need) => {
      const shop = own.shops.open.find((one) => one.shop.id === need.from?.value);
      const from = shop?.facts.region;
      if (!shop || !from || !need.from || need.need === 0 || from.value === region.value || seen.has(shop.shop.id))
        return [];
      seen.add(shop.shop.id);
      if (craft.shops.some((file) => file.customs?.entries.has(from.value))) return [];
      return [
        {
          at: need.from,
          with: [{ fact: from, says: `it sends from ${from.text}` }],
          message: `${shop.shop.id} sends from ${from.text} to ${region.value}: tax, duty and the carrier's handling are not in any total. Add \`${from.text}:\` under \`customs:\` with what applies to you; rules change, check yours.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: "Tax, duty and the carrier's fee come at the door.",
  remedy: 'Add what applies under `customs:`, with the day you looked it up; check your local rules.',
  source: 'rules change often; the file holds yours with their date',
  bad: `
dryfit: build
name: Example
region: EU
parts:
  motors:
    count: 4
    sold-as: motor-a
    from: «pellam»
---
dryfit: shops
currency: EUR
shops:
  pellam:
    currency: EUR
    region: US
    flat: 5
    offers:
      motor-a:
        - price: 16
`,
  good: `
dryfit: build
name: Example
region: EU
parts:
  motors:
    count: 4
    sold-as: motor-a
    from: pellam
---
dryfit: shops
currency: EUR
customs:
  US:
    tax: 20 %
    handling: 8
shops:
  pellam:
    currency: EUR
    region: US
    flat: 5
    offers:
      motor-a:
        - price: 16
`,
};
