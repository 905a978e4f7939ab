/** The cable is shorter than the way between its sockets with a little slack. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'harness-too-short',
  group: 'harness',
  title: 'Cable does not reach',
  severity: 'warning',
  needs: { length: 'harness.length', distance: 'harness.distance' },
  when: (craft) => craft.roles.harness?.length !== undefined && craft.roles.harness.distance !== undefined,
  judge({ length, distance }) {
    if (!fallsShort(length.value, distance.value + 15e-3)) return undefined;
    const wanted = millimetres(Math.ceil((distance.value + 15e-3) / 5e-3) * 5e-3);
    return {
      with: [{ fact: distance, says: `${millimetres(distance.value)} from socket to socket` }],
      message: `The cable is ${millimetres(length.value)} long for a way of ${millimetres(distance.value)}. It is under tension and comes out in a crash. Use one of ${wanted} or more.`,
    };
  },
});

export const explanation = {
  why: 'A cable under tension pulls its plug out in a crash.',
  remedy: 'Take a longer cable, up to about 100 mm.',
  source: 'common practice: 15 mm of slack; long motor signals beside motor wires pick up noise',
  bad: `
dryfit: build
name: Example
parts:
  harness:
    length: «35 mm»
    distance: 40 mm
`,
  good: `
dryfit: build
name: Example
parts:
  harness:
    length: 55 mm
    distance: 40 mm
`,
};
