/** The bench has what the build would buy: the wire of its battery lead, or a tool that is an extra of the build under the bench's own word for it. */

import type { Fact } from '../../build/fact';
import { check } from '../check';

export default check({
  id: 'already-owned-unused',
  group: 'order',
  title: 'Owned already',
  severity: 'information',
  needs: { order: 'worked.order' },
  may: { wire: 'battery-lead.wire', wires: 'bench.tools.wires' },
  when: (craft) => craft.bench?.tools !== undefined,
  judge({ order, wire, wires }, craft) {
    const tools = (craft.bench?.tools ?? {}) as Readonly<Record<string, Fact<unknown> | undefined>>;
    return order.value.needs.flatMap((need) => {
      if (need.need === 0) return [];
      const wireThere = need.role === 'battery-lead' && wires?.items.find((item) => item.value === wire?.value);
      if (wireThere)
        return [
          {
            at: need.at,
            with: [{ fact: wireThere, says: `the bench has ${wireThere.text}` }],
            message: `Your bench has ${wireThere.text} wire, which this lead is made of. With a plug in the drawer it need not be bought: say \`owned: yes\` then.`,
          },
        ];
      const tool = need.kind === 'extra' ? tools[need.role] : undefined;
      if (tool?.value !== true) return [];
      return [
        {
          at: need.at,
          with: [{ fact: tool, says: 'the bench has it' }],
          message: `Your bench has \`${need.role}\` among its tools, and this build would buy another. Say \`owned: yes\`, or keep it when it is meant.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Money for what lies in the drawer.',
  remedy: 'Say `owned: yes`, and look whether it is really the same.',
  source: 'the bench file',
  bad: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: 12 AWG
    sold-as: «lead-a»
  extras:
    thread-lock:
      sold-as: «locker-a»
---
dryfit: bench
tools:
  wires: 12 AWG
  thread-lock: yes
---
dryfit: shops
shops:
  pellam:
    flat: 5
    offers:
      lead-a:
        - price: 4
      locker-a:
        - price: 6
`,
  good: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: 12 AWG
    owned: yes
    sold-as: lead-a
  extras:
    thread-lock:
      sold-as: locker-a
---
dryfit: bench
tools:
  wires: 12 AWG
  thread-lock: no
---
dryfit: shops
shops:
  pellam:
    flat: 5
    offers:
      lead-a:
        - price: 4
`,
};
