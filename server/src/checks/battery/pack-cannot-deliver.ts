/** The pack's label promises less current than the craft asks for. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { amperes, apart } from '../words';

export default check({
  id: 'pack-cannot-deliver',
  group: 'battery',
  title: 'Pack cannot give the current',
  severity: 'warning',
  needs: { rating: 'pack.discharge', capacity: 'pack.capacity', current: 'worked.pack-current' },
  may: { burst: 'pack.burst-discharge', limit: 'flight.throttle-limit' },
  judge({ rating, capacity, current, burst, limit }) {
    const peak = current.value.peak * Math.min(1, limit?.value ?? 1) ** 2;
    const steady = rating.value * capacity.value;
    const short = burst ? burst.value * capacity.value : undefined;
    if (!fallsShort(steady, 0.6 * peak)) return undefined;
    const grave = short !== undefined ? fallsShort(short, 0.6 * peak) : fallsShort(steady, 0.3 * peak);
    const [promised, asked] = apart(amperes, steady, peak);
    return {
      at: rating,
      with: [{ fact: current, says: `about ${amperes(peak)} at full throttle` }],
      severity: grave ? 'error' : 'warning',
      danger: grave ? 'fire' : undefined,
      message: `The label promises ${promised} (${rating.text} of ${capacity.text})${short === undefined ? '' : `, ${amperes(short)} for short`}; the model gives about ${asked} at full throttle. The pack sags, heats and puffs. Use a larger or stronger pack, a flatter propeller, or limit the throttle.`,
    };
  },
});

export const explanation = {
  why: 'A pack that is asked for more than it can give sags, heats, puffs and is soon ruined.',
  remedy: 'Take a larger pack or one with a higher rating, a flatter propeller, or limit the throttle.',
  source: 'current from the model at full throttle; a share of 0.6 as flights are flown: common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1100 mAh
    discharge: «35 C»
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1100 mAh
    discharge: 100 C
`,
};
