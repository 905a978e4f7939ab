/** An iron is used without fan or extraction. */

import { check } from '../check';

export default check({
  id: 'fume-and-lead',
  group: 'assembly',
  title: 'No fan for the fume',
  severity: 'information',
  needs: { part: 'motors.count', own: 'bench.tools.fume-extraction' },
  judge({ part, own }) {
    if (own.value) return undefined;
    return {
      at: part,
      with: [{ fact: own, says: 'the bench has none' }],
      message:
        'There is no fan or extraction on your bench. Flux fume irritates lungs, lead-free flux more so: open a window and blow it away, protect your eyes, wash your hands.',
    };
  },
});

export const explanation = {
  why: 'Flux fume irritates, and makes some people allergic to it for good.',
  remedy: 'A fan or an open window, eyes protected, hands washed.',
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
  fume-extraction: no
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
  fume-extraction: yes
`,
};
