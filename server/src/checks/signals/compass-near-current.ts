/** The compass sits near the battery lead. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { apart, millimetres } from '../words';

export default check({
  id: 'compass-near-current',
  group: 'signals',
  title: 'Compass near heavy current',
  severity: 'warning',
  needs: { distance: 'gps.from-battery-lead', compass: 'gps.compass' },
  judge({ distance, compass }) {
    if (!compass.value || !fallsShort(distance.value, 0.06)) return undefined;
    return {
      at: distance,
      with: [{ fact: compass, says: 'it has a compass' }],
      message: `The compass is ${apart(millimetres, distance.value, 0.06)[0]} from the battery lead; below 60 mm its heading swings with the throttle. Move it, or leave the compass unused.`,
    };
  },
});

export const explanation = {
  why: 'The current in the battery lead turns a near compass by tens of degrees, and the craft flies off course.',
  remedy: 'Put it on a mast or an arm tip, or leave the compass unused.',
  source: 'satellite receiver guide of widely used open flight firmware; the distance of 60 mm is common practice',
  bad: `
dryfit: build
name: Example
parts:
  gps:
    protocol: UBX
    compass: yes
    from-battery-lead: «55 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  gps:
    protocol: UBX
    compass: yes
    from-battery-lead: 60 mm
`,
};
