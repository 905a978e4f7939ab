/** The bench owns what the build would buy. */

import { check } from '../check';

export default check({
  id: 'already-owned-unused',
  group: 'order',
  title: 'Owned already',
  severity: 'information',
  why: 'Money for what lies in the drawer.',
  remedy: 'Say `owned: yes`, and look whether it is really the same.',
  source: 'the bench file',
  needs: { wire: 'battery-lead.wire', owned: 'bench.tools.wires', order: 'worked.order' },
  judge({ wire, owned, order }) {
    const need = order.value.needs.find((one) => one.role === 'battery-lead' && one.need > 0);
    const same = owned.items.find((item) => item.value === wire.value);
    if (!need || !same) return undefined;
    return {
      at: need.at,
      with: [{ fact: same, says: `the bench has ${same.text}` }],
      message: `Your bench has ${same.text} wire, which this lead is made of. With a plug in the drawer it need not be bought: say \`owned: yes\` then.`,
    };
  },
  bad: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: 12 AWG
    sold-as: «lead-a»
---
dryfit: bench
tools:
  wires: 12 AWG
---
dryfit: shops
shops:
  pellam:
    flat: 5
    offers:
      lead-a:
        - price: 4
`,
  good: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: 12 AWG
    owned: yes
    sold-as: lead-a
---
dryfit: bench
tools:
  wires: 12 AWG
---
dryfit: shops
shops:
  pellam:
    flat: 5
    offers:
      lead-a:
        - price: 4
`,
});
