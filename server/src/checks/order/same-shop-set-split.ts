/** Flight controller and ESC come from different shops. */

import { check } from '../check';

export default check({
  id: 'same-shop-set-split',
  group: 'order',
  title: 'Boards from two shops',
  severity: 'information',
  needs: { order: 'worked.order' },
  judge({ order }) {
    const of = (role: string) => order.value.needs.find((need) => need.role === role && need.need > 0);
    const [board, esc] = [of('flight-controller'), of('esc')];
    if (!board?.from || !esc?.from || board.from.value === esc.from.value) return undefined;
    return {
      at: esc.from,
      with: [{ fact: board.from, says: `the flight controller comes from ${board.from.value}` }],
      message: `Flight controller and ESC come from two shops, so the cable between them is yours to check: \`dryfit harness\`. Bought as a set it is usually right.`,
    };
  },
});

export const explanation = {
  why: 'Bought as a set the cable between them is usually right; bought apart it is yours to check.',
  remedy: 'Buy both as a set, or check the pin order with `dryfit harness`.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    sold-as: board-a
    from: pellam
  esc:
    sold-as: esc-a
    from: «tarn»
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      board-a:
        - price: 40
      esc-a:
        - price: 60
  tarn:
    currency: EUR
    flat: 5
    offers:
      esc-a:
        - price: 58
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    sold-as: board-a
    from: pellam
  esc:
    sold-as: esc-a
    from: pellam
---
dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      board-a:
        - price: 40
      esc-a:
        - price: 60
  tarn:
    currency: EUR
    flat: 5
    offers:
      esc-a:
        - price: 58
`,
};
