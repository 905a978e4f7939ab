/** Motor screws go into metal and there is no thread locker. */

import { check } from '../check';

export default check({
  id: 'thread-lock-missing',
  group: 'assembly',
  title: 'No thread locker for motor screws',
  severity: 'information',
  needs: { part: 'motors.count', own: 'bench.tools.thread-lock' },
  judge({ part, own }) {
    if (own.value) return undefined;
    return {
      at: part,
      with: [{ fact: own, says: 'the bench has none' }],
      message:
        'Motor screws in metal shake loose without thread locker, and your bench has none. Get medium strength; keep it off plastic.',
    };
  },
});

export const explanation = {
  why: 'Motor screws shake loose in an hour of flying.',
  remedy: 'A drop of medium thread locker on each; none on plastic, nylon or propeller nuts.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    count: «4»
---
dryfit: bench
tools:
  thread-lock: no
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
---
dryfit: bench
tools:
  thread-lock: yes
`,
};
