/** Joints are to be made and there is no braid to undo a bridge. */

import { check } from '../check';

export default check({
  id: 'flux-or-wick-missing',
  group: 'assembly',
  title: 'Nothing to undo a bridge with',
  severity: 'information',
  needs: { part: 'motors.count', own: 'bench.tools.wick' },
  judge({ part, own }) {
    if (own.value) return undefined;
    return {
      at: part,
      with: [{ fact: own, says: 'the bench has no braid' }],
      message:
        'There is no desoldering braid or pump on your bench. Braid and flux undo a bridge in ten seconds; get some before the first joint.',
    };
  },
});

export const explanation = {
  why: 'A bridge between two pads of a board is found under the loupe and undone with braid, or not at all.',
  remedy: 'Get a little braid and flux.',
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
  wick: no
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
  wick: yes
`,
};
