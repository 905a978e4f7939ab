/** Only one shop has a part. */

import { check } from '../check';

export default check({
  id: 'single-source',
  group: 'order',
  title: 'Only one shop has it',
  severity: 'information',
  needs: { order: 'worked.order' },
  judge({ order }) {
    const { needs, offersOf, order: own } = order.value;
    if (own.shops.open.length < 2) return undefined;
    const lone = needs.filter((need) => {
      const shops = new Set(offersOf(need.part).map(({ shop }) => shop.shop.id));
      return need.need > 0 && shops.size === 1;
    });
    if (lone.length === 0) return undefined;
    const named = lone.slice(0, 4).map((need) => `\`${need.part}\``);
    return {
      at: lone[0]!.at,
      message: `Only one shop has ${named.join(', ')}${lone.length > named.length ? ` and ${lone.length - named.length} more` : ''}. Note a second choice that fits, for the day it is sold out.`,
    };
  },
});

export const explanation = {
  why: 'When it sells out the build waits.',
  remedy: 'Note a second part that would fit.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
    sold-as: «motor-a»
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      frame-a:
        - price: 40
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
parts:
  motors:
    count: 4
    sold-as: motor-a
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
