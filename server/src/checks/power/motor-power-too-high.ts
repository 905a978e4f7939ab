/** The motor takes more power at full throttle than its maker allows. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, watts } from '../words';

export default check({
  id: 'motor-power-too-high',
  group: 'power',
  title: 'Motor driven above its power',
  severity: 'warning',
  needs: { rating: 'motors.peak-power', values: 'worked.pack-values' },
  may: { limit: 'flight.throttle-limit' },
  when: (craft) => craft.roles.motors?.['peak-power'] !== undefined,
  judge({ rating, values, limit }) {
    const { full } = values.value;
    if (!full.ok) return undefined;
    const share = Math.min(1, limit?.value ?? 1) ** 2;
    const taken = full.value.escCurrent * full.value.busVoltage * share;
    if (!exceeds(taken, rating.value)) return undefined;
    const [allowed, drawn] = apart(watts, rating.value, taken);
    return {
      at: rating,
      message: `The motor may take ${allowed}; the model gives about ${drawn} at full throttle with this propeller and pack. It overheats in long punches. Use a flatter propeller, fewer cells, or limit the throttle.`,
    };
  },
});

export const explanation = {
  why: 'Power above the rating is heat in the winding.',
  remedy: 'Take a smaller or flatter propeller, fewer cells, or a larger motor.',
  source: "modelled power of this motor, propeller and pack at full throttle, against the maker's figure",
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
    peak-power: «300 W»
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
parts:
  motors:
    stator: 2207
    kv: 1850
    peak-power: 900 W
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
};
