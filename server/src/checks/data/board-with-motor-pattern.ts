/** A board has a hole pattern that is known from motors. */
import type { Fact } from '../../build/fact';
import { boardName } from '../../plan/mounts';
import type { BoardMount } from '../../text/notation/mount';
import { check } from '../check';

export default check({
  id: 'board-with-motor-pattern',
  group: 'data',
  title: 'Motor pattern on a board',
  severity: 'information',
  needs: {},
  may: { controller: 'flight-controller.mount', esc: 'esc.mount' },
  when: (craft) => craft.roles['flight-controller']?.mount !== undefined || craft.roles.esc?.mount !== undefined,
  judge({ controller, esc }) {
    const motorLike = (fact: Fact<BoardMount> | undefined): boolean =>
      fact !== undefined &&
      ['9x9', '12x12', '16x12', '16x19', '19x16', '19x19', '19x25', '25x19'].includes(boardName(fact.value));
    return [controller, esc].flatMap((fact) =>
      fact && motorLike(fact)
        ? [
            {
              at: fact,
              apart: fact.at.path,
              message: `${boardName(fact.value)} is a pattern of motors, where it means opposite holes; boards come with 16, 20, 25.5, 26 and 30.5 mm between neighbouring holes. Measure again.`,
            },
          ]
        : [],
    );
  },
});

export const explanation = {
  why: 'The same figures mean neighbouring holes on a board and opposite holes under a motor.',
  remedy: 'Measure the distance of neighbouring holes.',
  source: 'common practice: boards come with 16, 20, 25.5, 26 and 30.5 mm squares',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mount: «19x19 M2»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mount: 20x20 M2
`,
};
