/** What a gate vouched for was changed after it was passed. */

import { gateStates } from '../../plan/assembly-steps';
import { check } from '../check';

export default check({
  id: 'gate-void',
  group: 'assembly',
  title: 'A passed gate is void',
  severity: 'warning',
  needs: { gates: 'build.gates' },
  judge(_, craft) {
    return gateStates(craft).flatMap(({ gate, is, date }) => {
      const fact = craft.said.gates?.entries.get(gate);
      if (!fact || is !== 'void') return [];
      return [
        {
          at: fact,
          apart: gate,
          message: `What the gate \`${gate}\` vouches for was changed since it was passed on ${date}. Test again, then \`dryfit assemble FILE --tick ${gate}\` writes the new date.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'A test says nothing of what was built afterwards.',
  remedy: 'Test again and write the new date, or take the gate out.',
  source: 'the build itself',
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
  receiver: 2026-11-20
`,
};
