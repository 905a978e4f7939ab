/** The short-time current of the ESC is not above its continuous current. */

import { fallsShort } from '../beyond';
import { check } from '../check';

export default check({
  id: 'esc-burst-below-continuous',
  group: 'data',
  title: 'Burst current below the continuous one',
  severity: 'warning',
  needs: { current: 'esc.current', burst: 'esc.burst' },
  when: (craft) => craft.roles.esc?.burst !== undefined,
  judge({ current, burst }) {
    if (!fallsShort(burst.value.current, current.value)) return undefined;
    return {
      at: burst,
      with: [{ fact: current, says: `${current.text} continuous` }],
      message: `The ESC would give ${burst.text} for a short time and ${current.text} without end; that is the wrong way round. Put the larger figure under \`burst\`.`,
    };
  },
});

export const explanation = {
  why: 'The two were mistaken for one another, and the ESC is judged by the wrong one.',
  remedy: 'Continuous under `current`, the larger short-time figure under `burst`.',
  source: 'what the two words mean',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    current: 60 A
    burst: «45 A for 10 s»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    current: 45 A
    burst: 60 A for 10 s
`,
};
