/** A pack of cylindrical cells is asked for more current than such cells give. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { amperes, apart } from '../words';

export default check({
  id: 'li-ion-overdrawn',
  group: 'battery',
  title: 'Li-ion cells asked for too much',
  severity: 'warning',
  needs: { cells: 'pack.cells', chemistry: 'pack.chemistry', current: 'worked.pack-current' },
  may: { limit: 'flight.throttle-limit', rating: 'pack.discharge', capacity: 'pack.capacity' },
  when: (_, pack) => pack?.facts.chemistry?.value === 'Li-ion',
  judge({ cells, chemistry, current, limit, rating, capacity }) {
    const peak = current.value.peak * Math.min(1, limit?.value ?? 1) ** 2;
    const mean = current.value.mean ?? 0;
    const usual = cells.value.parallel * 30;
    const most = rating && capacity ? Math.max(rating.value * capacity.value, usual) : usual;
    // Full throttle for a moment is not how such a craft is flown.
    const grave = mean > most || peak > 3 * most;
    if (!exceeds(peak, most) && !exceeds(mean, most)) return undefined;
    const [gives, asked] = apart(amperes, most, peak);
    return {
      at: chemistry,
      with: [{ fact: current, says: `about ${amperes(peak)} at full throttle` }],
      severity: grave ? 'warning' : 'information',
      message: `Cylindrical cells give about 30 A each${most === usual && cells.value.parallel === 1 ? '' : `, ${gives} for this pack`}; the model gives about ${asked} at full throttle${mean > 0 ? ` and ${amperes(mean)} as it is flown` : ''}. ${grave ? 'They heat and sag. Use LiPo or two in parallel, or limit the throttle.' : 'Fly it gently: full throttle makes it sag at once.'}`,
    };
  },
});

export const explanation = {
  why: 'Cylindrical cells sag and heat far earlier than LiPo; overdrawn they vent.',
  remedy: 'Take LiPo for punchy flying, two strings in parallel, or limit the throttle.',
  source: "cell makers' continuous currents of about 30 A for the strongest cells of this size: common practice",
  bad: `
dryfit: build
name: Example
craft: race-5
parts:
  motors:
    stator: 2207
    kv: 2000
  propellers:
    size: 5.1x4.6x3
packs:
  main:
    cells: 6S
    chemistry: «Li-ion»
    capacity: 4000 mAh
`,
  good: `
dryfit: build
name: Example
craft: long-range-7
parts:
  motors:
    stator: 2207
    kv: 1300
  propellers:
    size: 5.1x2.5x2
packs:
  main:
    cells: 4S2P
    chemistry: Li-ion
    capacity: 8000 mAh
`,
};
