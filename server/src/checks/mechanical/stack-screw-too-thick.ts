/** The screws of the stack are thicker than the holes of a board, or rattle in them without grommets. */
import type { Fact } from '../../build/fact';
import { exceeds } from '../beyond';
import type { Verdict } from '../check';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'stack-screw-too-thick',
  group: 'mechanical',
  title: "Stack screw does not pass the board's holes",
  severity: 'error',
  needs: { screw: 'worked.stack-screw' },
  may: {
    controller: 'flight-controller.hole',
    esc: 'esc.hole',
    soft: 'flight-controller.grommets',
    escSoft: 'esc.grommets',
  },
  when: (craft) => craft.roles['flight-controller']?.hole !== undefined || craft.roles.esc?.hole !== undefined,
  judge({ screw, controller, esc, soft, escSoft }) {
    const thread = screw.value.thread / 1000;
    const one = (name: string, hole: Fact<number> | undefined, grommets: boolean | undefined): Verdict[] => {
      if (!hole) return [];
      const base = {
        at: screw,
        with: [{ fact: hole, says: `the ${name} has ${millimetres(hole.value)} holes` }],
        apart: name,
      };
      if (exceeds(thread, hole.value))
        return [
          {
            ...base,
            message: `M${screw.value.thread} screws do not pass the ${millimetres(hole.value)} holes of the ${name}. Use thinner screws with matching standoffs, never a drill.`,
          },
        ];
      if (exceeds(hole.value - thread, 1.2e-3) && grommets === false)
        return [
          {
            ...base,
            severity: 'warning',
            message: `M${screw.value.thread} screws have ${millimetres(hole.value - thread)} of play in the holes of the ${name}, and no grommets come with it. Add grommets for M${screw.value.thread}.`,
          },
        ];
      return [];
    };
    return [...one('flight controller', controller, soft?.value), ...one('ESC', esc, escSoft?.value)];
  },
});

export const explanation = {
  why: 'A hole must never be drilled larger: copper layers lie close to it and short to the screw.',
  remedy: 'Take screws for the holes of the board, with the grommets that belong to it.',
  source:
    'common practice: 2 mm holes for M2, 3 mm with an M2 grommet, 4 mm with an M3 grommet; up to 1.2 mm of play without',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    stack-screws: «M3x25 cap»
  flight-controller:
    hole: 2.2 mm
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    stack-screws: M3x25 cap
  flight-controller:
    hole: 3 mm
`,
};
