/** There is no meter to check polarity and shorts before power. */

import { check } from '../check';

export default check({
  id: 'meter-missing',
  group: 'assembly',
  title: 'No meter before the first power',
  severity: 'warning',
  danger: 'fire',
  needs: { part: 'motors.count', own: 'bench.tools.meter' },
  judge({ part, own }) {
    if (own.value) return undefined;
    return {
      at: part,
      with: [{ fact: own, says: 'the bench has no meter' }],
      message:
        'There is no multimeter on your bench. Without checking polarity and shorts first, the first plug-in burns whatever is wrong. Borrow one with a beeper.',
    };
  },
});

export const explanation = {
  why: 'Without a continuity check the first plug-in is a gamble.',
  remedy: 'Get or borrow a multimeter with a beeper.',
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
  meter: no
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
  meter: yes
`,
};
