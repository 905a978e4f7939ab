/** The flight controller's (or all-in-one board's) hole pattern is not one that the frame offers. */
import { boardOnFrame } from '../board-on-frame';
import { check } from '../check';

export default check({
  id: 'flight-controller-holes-off-frame',
  group: 'mechanical',
  title: 'Flight controller does not sit on the frame',
  severity: 'error',
  needs: { board: 'flight-controller.mount', frame: 'frame.stack-mounts' },
  may: { grommets: 'flight-controller.grommets' },
  judge: ({ board, frame, grommets }, craft) =>
    boardOnFrame(
      craft,
      craft.boards === 'all-in-one' ? 'all-in-one board' : 'flight controller',
      board,
      frame,
      grommets?.value,
    ),
});

export const explanation = {
  why: 'A board that cannot be screwed down has no firm hold for its gyro and shorts against the carbon sooner or later.',
  remedy: 'Take a board with a pattern of the frame, or add an adapter plate.',
  source:
    'common practice: sides of the square between neighbouring holes; a spoken 30x30 is 30.5 mm, 25x25 is 25.5 mm',
  bad: `
dryfit: build
name: Board between the holes
parts:
  frame:
    stack-mounts: 30.5x30.5 M3, 20x20 M2
  flight-controller:
    mount: «25.5x25.5 M2»
`,
  good: `
dryfit: build
name: Spoken thirty is thirty and a half
parts:
  frame:
    stack-mounts: 30.5x30.5 M3, 20x20 M2
  flight-controller:
    mount: 30x30 M3
`,
};
