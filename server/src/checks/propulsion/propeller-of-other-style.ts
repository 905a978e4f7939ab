/** Square duct propellers on an open frame, or tapered ones in a duct. */

import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'propeller-of-other-style',
  group: 'propulsion',
  title: 'Propeller shape does not suit the frame',
  severity: 'information',
  needs: { style: 'propellers.style', wheelbase: 'frame.wheelbase' },
  may: { duct: 'frame.duct-diameter' },
  judge({ style, duct }, craft) {
    const ducted = duct !== undefined || /^(whoop|ducted)-/.test(craft.said.craft?.value ?? '');
    if (style.value === 'open' && duct)
      return {
        with: [{ fact: duct, says: `ducts of ${millimetres(duct.value)}` }],
        message:
          'Tapered propellers leave the duct unused. Square-tipped duct propellers of the right size give more thrust there.',
      };
    if (style.value === 'duct' && !ducted)
      return { message: 'Square-tipped duct propellers on an open frame are noisy and draw more. Use tapered ones.' };
    return undefined;
  },
});

export const explanation = {
  why: 'Square tips are noisy and draw more in free air; tapered ones leave the duct unused.',
  remedy: 'Take duct propellers for ducts and open ones for open frames.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  frame:
    wheelbase: 225 mm
  propellers:
    style: «duct»
`,
  good: `
dryfit: build
name: Example
craft: ducted-3
parts:
  frame:
    wheelbase: 140 mm
    duct-diameter: 80 mm
  propellers:
    style: duct
`,
};
