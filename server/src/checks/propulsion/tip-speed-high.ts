/** At full throttle the tips of the propellers come near the speed of sound. */

import { check } from '../check';
import { apart } from '../words';

export default check({
  id: 'tip-speed-high',
  group: 'propulsion',
  title: 'Propeller tips near the speed of sound',
  severity: 'warning',
  needs: { values: 'worked.pack-values', kv: 'motors.kv' },
  may: { limit: 'flight.throttle-limit' },
  judge({ values, kv, limit }) {
    const { full } = values.value;
    if (!full.ok) return undefined;
    const mach = full.value.tipMach * Math.min(1, limit?.value ?? 1);
    if (mach <= 0.7) return undefined;
    const [tips, fine] = apart((value, more = 0) => value.toFixed(2 + more), mach, 0.7);
    return {
      at: kv,
      severity: mach > 0.8 ? 'warning' : 'information',
      message: `At full throttle the propeller tips reach about ${tips} of the speed of sound. From ${fine} on they make noise instead of thrust. Use lower Kv, fewer cells or smaller propellers, or limit the throttle.`,
    };
  },
});

export const explanation = {
  why: 'Near the speed of sound a propeller makes noise and heat instead of thrust.',
  remedy: 'Take lower Kv, fewer cells or smaller propellers, or limit the throttle.',
  source: 'modelled speed at full throttle; Mach 0.70 and 0.80: common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2807
    kv: «2400»
  propellers:
    size: 7x3x2
packs:
  main:
    cells: 6S
    capacity: 3000 mAh
    cell-resistance: 2 mOhm
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1750
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
};
