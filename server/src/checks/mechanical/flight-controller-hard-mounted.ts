/** The flight controller of a craft of three inches or more comes without soft grommets. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { inches } from '../words';

/** m: three inches, which are sold as 76 mm as well. */
const three = 76e-3;

export default check({
  id: 'flight-controller-hard-mounted',
  group: 'mechanical',
  title: 'Flight controller without grommets',
  severity: 'information',
  needs: { soft: 'flight-controller.grommets', size: 'propellers.size' },
  judge({ soft, size }) {
    if (soft.value || fallsShort(size.value.diameter, three)) return undefined;
    return {
      at: soft,
      with: [{ fact: size, says: `${inches(size.value.diameter)} propellers` }],
      message:
        'The flight controller has no soft grommets. Vibration reaches the gyro, and motors run hot. Add grommets and tighten the nuts only until they begin to bulge.',
    };
  },
});

export const explanation = {
  why: 'Vibration that reaches the gyro makes the motors hot and the craft twitch.',
  remedy: 'Add soft grommets for its holes.',
  source: 'documentation of widely used open flight firmware on soft mounting; from three inches on: common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    grommets: «no»
  propellers:
    size: 3x2x3
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    grommets: no
  propellers:
    size: 2.5x1.9x3
`,
};
