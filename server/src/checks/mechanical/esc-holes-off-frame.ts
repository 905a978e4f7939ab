/** The hole pattern of a four-in-one ESC is not one that the frame offers. */
import { boardOnFrame } from '../board-on-frame';
import { check } from '../check';

export default check({
  id: 'esc-holes-off-frame',
  group: 'mechanical',
  title: 'ESC does not sit on the frame',
  severity: 'error',
  needs: { board: 'esc.mount', frame: 'frame.stack-mounts' },
  may: { grommets: 'esc.grommets' },
  // Single ESCs lie on the arms; the ESC of an all-in-one board has no holes of its own.
  when: (craft) => craft.boards !== 'all-in-one' && craft.roles.esc?.type?.value !== 'single',
  judge: ({ board, frame, grommets }, craft) => boardOnFrame(craft, 'ESC', board, frame, grommets?.value),
});

export const explanation = {
  why: 'An ESC that cannot be screwed down moves against carbon, which conducts.',
  remedy: 'Take an ESC with a pattern of the frame, or add an adapter plate.',
  source:
    'common practice: sides of the square between neighbouring holes; 25.5 and 26 mm meet through soft grommets only',
  bad: `
dryfit: build
name: ESC too small for the holes
parts:
  frame:
    stack-mounts: 30.5x30.5 M3
  esc:
    type: 4-in-1
    mount: «20x20 M2»
`,
  good: `
dryfit: build
name: ESC on a plate
parts:
  frame:
    stack-mounts: 30.5x30.5 M3
  esc:
    type: 4-in-1
    mount: 20x20 M2
  adapters:
    plate:
      type: plate
      takes: 20x20
      gives: 30.5x30.5
`,
};
