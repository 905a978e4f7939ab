/** The motor draws more at full throttle than its maker allows. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { amperes, apart } from '../words';

export default check({
  id: 'motor-current-too-high',
  group: 'power',
  title: 'Motor driven above its own rating',
  severity: 'warning',
  needs: { rating: 'motors.peak-current', drawn: 'worked.pack-motor-current' },
  may: { limit: 'flight.throttle-limit' },
  judge({ rating, drawn, limit }) {
    const share = Math.min(1, limit?.value ?? 1) ** 2;
    const typical = drawn.value.typical * share;
    const most = rating.value.current;
    if (!exceeds(typical, most)) return undefined;
    const [allowed, drawing] = apart(amperes, most, typical);
    // The model is off by about as much, and the pack sinks within the first second.
    const little = typical <= 1.15 * most;
    return {
      at: rating,
      severity: little ? 'information' : undefined,
      with: [{ fact: drawn, says: `about ${amperes(typical)} at full throttle` }],
      message: `The motor may draw ${allowed}${rating.value.duration ? ` for ${rating.value.duration} s` : ''}; the model gives about ${drawing} at full throttle with this propeller and pack. It overheats in long punches. Use a flatter propeller, fewer cells, or limit the throttle.`,
    };
  },
});

export const explanation = {
  why: 'A motor above its current overheats: magnets weaken and the enamel of the winding chars.',
  remedy: 'Take a smaller or flatter propeller, fewer cells, or a larger motor.',
  source: "modelled current of this motor, propeller and pack at full throttle, against the maker's figure",
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
    peak-current: «15 A for 10 s»
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
    peak-current: 45 A for 10 s
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
};
