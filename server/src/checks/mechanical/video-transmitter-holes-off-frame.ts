/** None of the video transmitter's hole patterns is one of the frame's. */
import { plateFor } from '../../plan/adapters';
import { bestBoardFit, boardName } from '../../plan/mounts';
import { check } from '../check';

export default check({
  id: 'video-transmitter-holes-off-frame',
  group: 'mechanical',
  title: 'Video transmitter has no place to be screwed to',
  severity: 'error',
  needs: { unit: 'video-transmitter.mount', frame: 'frame.stack-mounts' },
  may: { rear: 'frame.rear-mounts', sticky: 'video-transmitter.adhesive' },
  when: (craft) => craft.roles['video-transmitter']?.adhesive?.value !== true,
  judge({ unit, frame, rear, sticky }, craft) {
    const patterns = [...frame.items, ...(rear?.items ?? [])].map((item) => item.value);
    const offered = [...new Set(patterns.map(boardName))].join(' and ');
    // Soft pads of a light unit take up a third of a millimetre.
    if (
      unit.items.some((item) => bestBoardFit(item.value, patterns) !== 'apart' || plateFor(craft, item.value, patterns))
    )
      return undefined;
    const own = [...new Set(unit.items.map((item) => boardName(item.value)))].join(' and ');
    return {
      at: unit,
      with: [{ fact: frame, says: `the frame offers ${offered}` }],
      // Of a second bay that nobody spoke of nothing is known.
      severity: sticky && rear ? 'error' : sticky || rear ? 'warning' : 'information',
      message: `The video transmitter has ${own} holes, the frame offers ${offered}. ${sticky ? 'It cannot be fixed.' : 'It can only be stuck on, if its maker allows that (`adhesive: yes`).'} Use a unit with a pattern of the frame, or add a plate.`,
    };
  },
});

export const explanation = {
  why: 'A loose transmitter tears its own antenna plug off.',
  remedy: 'Take a unit with a pattern of the frame, add a plate, or stick it on where its maker allows that.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    stack-mounts: 30.5x30.5 M3
    rear-mounts: 20x20 M2
  video-transmitter:
    mount: «25.5x25.5 M2»
    adhesive: no
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    stack-mounts: 30.5x30.5 M3
    rear-mounts: 20x20 M2
  video-transmitter:
    mount: 25.5x25.5 M2, 20x20 M2
    adhesive: no
`,
};
