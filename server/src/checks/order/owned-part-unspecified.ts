/** A part that is owned says nothing of itself. */

import { boughtParts } from '../../plan/order-needs';
import { check } from '../check';

export default check({
  id: 'owned-part-unspecified',
  group: 'order',
  title: 'Owned part without its values',
  severity: 'warning',
  needs: {},
  judge(_, craft) {
    return boughtParts(craft).flatMap(({ role, facts }) => {
      if (facts.owned?.value !== true) return [];
      const head = new Set([
        'where',
        'used',
        'use',
        'kind',
        'name',
        'count',
        'spares',
        'owned',
        'from',
        'sold-as',
        'note',
        'source',
        'seen',
        'supplied',
        'at',
      ]);
      if (Object.keys(facts).some((key) => !head.has(key))) return [];
      return [
        {
          at: facts.owned,
          apart: role,
          message: `You own the ${role.replaceAll('-', ' ')}, but nothing is written of it, so nothing is compared. Write down what it is: plug, pattern, voltage, weight.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'What lies in the drawer is compared with nothing, and may have another plug or pattern.',
  remedy: 'Write down what the part is: plug, pattern, voltage, weight.',
  source: 'nothing is compared that nobody wrote down',
  bad: `
dryfit: build
name: Example
parts:
  battery-lead:
    owned: «yes»
`,
  good: `
dryfit: build
name: Example
parts:
  battery-lead:
    owned: yes
    plug: XT60
    wire: 12 AWG
`,
};
