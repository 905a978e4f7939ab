/** Flight controller and ESC have unlike hole patterns and would have to share one set of screws. */
import { plateFor } from '../../plan/adapters';
import { bestBoardFit, boardFit, boardName } from '../../plan/mounts';
import { check } from '../check';

export default check({
  id: 'boards-differ-in-holes',
  group: 'mechanical',
  title: 'Flight controller and ESC cannot share screws',
  severity: 'warning',
  needs: { controller: 'flight-controller.mount', esc: 'esc.mount' },
  may: { rear: 'frame.rear-mounts' },
  when: (craft) => craft.boards !== 'all-in-one' && craft.roles.esc?.type?.value !== 'single',
  judge({ controller, esc, rear }, craft) {
    const fit = boardFit(controller.value, esc.value);
    if (fit === 'same') return undefined;
    const second = rear?.items.map((item) => item.value) ?? [];
    if (bestBoardFit(controller.value, second) === 'same' || bestBoardFit(esc.value, second) === 'same')
      return undefined;
    if (plateFor(craft, controller.value, [esc.value])) return undefined;
    const names = [boardName(controller.value), boardName(esc.value)];
    return {
      with: [{ fact: esc, says: `the ESC has ${names[1]}` }],
      message:
        fit === 'near'
          ? `The flight controller has ${names[0]} holes, the ESC ${names[1]}: on common screws one of them is forced by a third of a millimetre a hole. Use soft grommets on both, or boards of one pattern.`
          : `The flight controller has ${names[0]} holes, the ESC ${names[1]}; they cannot share screws. Take boards of one pattern, put one into a second bay (\`rear-mounts\` of the frame), or add an adapter plate.`,
    };
  },
});

export const explanation = {
  why: 'Boards of unlike patterns need two bays or a plate between them, and a cable that reaches.',
  remedy: 'Take both boards with one pattern, put one into a second bay, or add an adapter plate.',
  source: 'common practice',
  bad: `
dryfit: build
name: Two sizes of board
parts:
  flight-controller:
    mount: «20x20 M2»
  esc:
    type: 4-in-1
    mount: 30.5x30.5 M3
`,
  good: `
dryfit: build
name: Two bays
parts:
  frame:
    stack-mounts: 30.5x30.5 M3
    rear-mounts: 20x20 M2
  flight-controller:
    mount: 20x20 M2
  esc:
    type: 4-in-1
    mount: 30.5x30.5 M3
`,
};
