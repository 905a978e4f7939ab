/** What a gate vouched for was changed after it was passed. */

import { gateStates } from '../../plan/assembly-steps';
import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'gate-void',
  group: 'assembly',
  title: 'A passed gate is void',
  severity: 'warning',
  why: 'A test says nothing of what was built afterwards.',
  remedy: 'Test again and write the new date, or take the gate out.',
  source: 'the build itself',
  needs: { gates: 'build.gates' },
  judge(_, craft) {
    return gateStates(craft).flatMap(({ gate, is, date, print }) => {
      const fact = craft.said.gates?.entries.get(gate);
      if (!fact || (is !== 'void' && is !== 'unbound')) return [];
      return [
        {
          at: fact,
          apart: gate,
          severity: is === 'void' ? ('warning' as const) : ('information' as const),
          message:
            is === 'void'
              ? `What the gate \`${gate}\` vouches for was changed since it was passed on ${date}. Test again, then write the day of that test.`
              : `The gate \`${gate}\` was passed on ${date}, with nothing to tell whether that still holds. Write its print beside the date when nothing was changed since.`,
          fixes: is === 'unbound' ? [write(fact, `${date} (${print})`)] : [],
        },
      ];
    });
  },
  bad: `
dryfit: build
name: Example
setup:
  failsafe: drop
gates:
  receiver: «2026-11-20 (000000)»
`,
  good: `
dryfit: build
name: Example
setup:
  failsafe: drop
gates:
  receiver: 2026-11-20 (cb7363)
`,
});
