/** At full throttle on a full pack the cells already sink far below what they stand. */

import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { apart, volts } from '../words';

export default check({
  id: 'pack-sags-deep',
  group: 'battery',
  title: 'Pack sinks low at full throttle',
  severity: 'warning',
  needs: { values: 'worked.pack-values', capacity: 'pack.capacity' },
  may: { resistance: 'pack.cell-resistance', chemistry: 'pack.chemistry', limit: 'flight.throttle-limit' },
  when: (craft) => exceeds(craft.said.flight?.['throttle-limit']?.value ?? 1, 0.95),
  judge({ values, capacity, resistance, chemistry }) {
    const { full } = values.value;
    const floor = chemistry?.value === 'Li-ion' ? 2.7 : 3.2;
    if (!full.ok || !fallsShort(full.value.cellVoltage, floor)) return undefined;
    const [sunk, stands] = apart(volts, full.value.cellVoltage, floor);
    const ground = resistance ? 'with its measured resistance' : 'with the usual resistance of its size';
    return {
      at: resistance ?? capacity,
      severity: resistance ? 'warning' : 'information',
      message: `At full throttle on a full pack the model has ${sunk} a cell ${ground}; below ${stands} cells age fast, and it sinks further as the pack empties. Use a larger pack, or a flatter propeller.${resistance ? '' : ' Write `cell-resistance` once you have measured it.'}`,
    };
  },
});

export const explanation = {
  why: 'Cells pulled below 3 V under load age fast, and the craft falls out of a punch.',
  remedy: 'Take a larger pack or one of lower resistance, a flatter propeller, or limit the throttle.',
  source: 'modelled voltage under load; 3.2 V a cell for LiPo and 2.7 V for Li-ion: common practice',
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
    capacity: 1300 mAh
    cell-resistance: «12 mOhm»
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
    capacity: 1300 mAh
    cell-resistance: 3 mOhm
`,
};
