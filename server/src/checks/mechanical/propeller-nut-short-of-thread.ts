/** The shaft ends before the nut's locking ring has thread. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { apart, millimetres } from '../words';

export default check({
  id: 'propeller-nut-short-of-thread',
  group: 'mechanical',
  title: 'Shaft too short for hub and nut',
  severity: 'warning',
  danger: 'blades',
  needs: { shaft: 'motors.shaft-length', hub: 'propellers.hub-thickness', kind: 'motors.shaft' },
  when: (craft) => craft.roles.motors?.shaft?.value.is !== 'press' && craft.roles.motors?.shaft?.value.is !== 't-mount',
  judge({ shaft, hub, kind }) {
    if (kind.value.is !== 'threaded' || Math.abs(kind.value.diameter - 5e-3) > 1e-6) return undefined;
    const left = shaft.value - hub.value;
    if (!fallsShort(left, 5e-3)) return undefined;
    return {
      at: hub,
      with: [{ fact: shaft, says: `${millimetres(shaft.value)} of shaft stand free` }],
      danger: fallsShort(left, 3e-3) ? 'blades' : undefined,
      message: `A hub of ${millimetres(hub.value)} leaves ${apart(millimetres, left, 5e-3)[0]} of the ${millimetres(shaft.value)} shaft; an M5 lock nut is 5 mm high. Its ring does not hold. Use a thinner hub, a flat nut, or a longer shaft.`,
    };
  },
});

export const explanation = {
  why: 'A lock nut holds by its nylon ring; when the thread does not reach it, it unscrews in flight.',
  remedy: 'Take a thinner hub, a flat nut, or a motor with a longer shaft.',
  source: 'DIN 985 M5: 5 mm high',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    shaft: M5
    shaft-length: 13 mm
  propellers:
    hub-thickness: «9 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    shaft: M5
    shaft-length: 14 mm
  propellers:
    hub-thickness: 9 mm
`,
};
