/** The strap is wider than the slots of the frame. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'strap-wider-than-slots',
  group: 'mechanical',
  title: 'Strap does not go through the slots',
  severity: 'warning',
  needs: { strap: 'strap.width', slots: 'frame.strap-width' },
  judge({ strap, slots }) {
    if (!exceeds(strap.value, slots.value + 0.5e-3)) return undefined;
    return {
      at: strap,
      with: [{ fact: slots, says: `the slots are ${millimetres(slots.value)} wide` }],
      message: `The strap is ${millimetres(strap.value)} wide, the slots of the frame ${millimetres(slots.value)}. It goes through only folded. Use a ${millimetres(slots.value)} strap.`,
    };
  },
});

export const explanation = {
  why: 'A folded strap lies on its edge, frays on the carbon and slips.',
  remedy: 'Take a strap as wide as the slots.',
  source: 'geometry of strap and slot; half a millimetre for how webbing varies: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    strap-width: 16 mm
  strap:
    width: «20 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    strap-width: 20 mm
  strap:
    width: 20 mm
`,
};
