/** Full throttle lifts less than the craft weighs, or hardly more. */

import { check } from '../check';
import { apart, grams, ratio } from '../words';

export default check({
  id: 'craft-cannot-hover',
  group: 'propulsion',
  title: 'Craft is too heavy to lift',
  severity: 'error',
  needs: { figures: 'worked.pack-figures', kv: 'motors.kv' },
  judge({ figures, kv }) {
    const { full, hover } = figures.value;
    if (!full.ok) return undefined;
    const lift = full.value.thrustToWeight.value;
    if (hover.ok && lift >= 1.5) return undefined;
    const [lifts, wanted] = apart(ratio, lift, 1.5);
    const { high } = full.value.thrustToWeight;
    const weight = full.value.thrust.value / lift / 9.80665;
    return {
      at: kv,
      severity: high < 1.5 ? 'error' : 'warning',
      message: `Full throttle on a full pack lifts about ${lifts} times the weight of ${grams(weight)}${lift < 1.5 ? `; ${wanted} times is the least that can be flown` : ''}. ${lift < 1 ? 'It does not leave the ground.' : 'It can hardly climb or brake.'} Use larger propellers or motors, more cells, or carry less.`,
    };
  },
});

export const explanation = {
  why: 'A craft that hovers near full throttle cannot climb, brake or hold against wind.',
  remedy: 'Take larger propellers or motors, more cells, or less load.',
  source: 'modelled static thrust on a full pack; 1.5 times the weight as the least that can be flown: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    weight: 900 g
  motors:
    stator: 1404
    kv: «3800»
  propellers:
    size: 3x2x3
packs:
  main:
    cells: 4S
    capacity: 850 mAh
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    weight: 60 g
  motors:
    stator: 1404
    kv: 3800
  propellers:
    size: 3x2x3
packs:
  main:
    cells: 4S
    capacity: 850 mAh
`,
};
