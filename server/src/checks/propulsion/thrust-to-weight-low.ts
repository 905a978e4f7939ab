/** Thrust to weight is below what craft of this class need. */
import { thrustTargetOf } from '../../plan/class-habits';
import { check } from '../check';
import { apart, grams, ratio } from '../words';

export default check({
  id: 'thrust-to-weight-low',
  group: 'propulsion',
  title: 'Less thrust than its class flies with',
  severity: 'warning',
  needs: { figures: 'worked.pack-figures', craft: 'build.craft', kv: 'motors.kv' },
  judge({ figures, craft, kv }) {
    const target = thrustTargetOf(craft.value);
    const { full } = figures.value;
    if (!target || !full.ok) return undefined;
    const typical = full.value.thrustToWeight.value;
    if (typical < 1.5 || typical >= target.least) return undefined;
    const { high } = full.value.thrustToWeight;
    const weight = full.value.thrust.value / typical / 9.80665;
    const sure = high < target.least;
    const [lifts, wanted] = apart(ratio, typical, target.least);
    const most = apart(ratio, high, target.least)[0];
    return {
      at: kv,
      with: [{ fact: craft, says: `${craft.text} wants ${ratio(target.least)} at least` }],
      severity: sure ? 'warning' : 'information',
      message: `Full throttle on a full pack lifts about ${lifts} times the weight of ${grams(weight)} (typically up to ${most}); ${craft.text} wants ${wanted} at least, and usually flies ${ratio(target.usual[0])} to ${ratio(target.usual[1])}. Carry less, or use more cells, motor or propeller.`,
    };
  },
});

export const explanation = {
  why: 'Below the least of its class a craft feels heavy, and has no reserve to catch a dive.',
  remedy: 'Take a lighter load, more cells, or a larger motor and propeller.',
  source:
    'least thrust to weight of each class, static on a full pack with payload: common practice; thrust from the model',
  bad: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  frame:
    weight: 900 g
  motors:
    stator: 2207
    kv: «1850»
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
  good: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  frame:
    weight: 110 g
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
};
