/** The pack has more or fewer cells than the motor's maker names. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { cellsOf } from '../words';

export default check({
  id: 'motor-cells-exceeded',
  group: 'battery',
  title: 'Motor is not meant for this pack',
  severity: 'warning',
  needs: { cells: 'pack.cells', motor: 'motors.cells' },
  may: { limit: 'flight.throttle-limit' },
  judge({ cells, motor, limit }) {
    const { series } = cells.value;
    const says = [{ fact: motor, says: `the motor is meant for ${motor.text}` }];
    if (series > motor.value.most) {
      const limited = limit !== undefined && !exceeds(limit.value, motor.value.most / series + 0.05);
      return {
        at: cells,
        with: says,
        severity: limited ? 'information' : 'warning',
        message: `The motor is meant for ${motor.text}; this pack is ${cellsOf(series)}. ${limited ? `The throttle limit of ${limit.text} keeps it in its range; do not raise it.` : `It overheats at full throttle. Use a motor for ${cellsOf(series)}, a ${cellsOf(motor.value.most)} pack, or limit the throttle to ${Math.floor((motor.value.most / series) * 100)} %.`}`,
      };
    }
    if (series < motor.value.least)
      return {
        at: cells,
        with: says,
        severity: 'information',
        message: `The motor is meant for ${motor.text}; on ${cellsOf(series)} it turns slowly and has little thrust. Use a motor of higher Kv, or a pack with more cells.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'More cells than the motor is wound for overheat it; fewer leave it without thrust.',
  remedy: 'Take a motor for this pack, or a pack for this motor.',
  source: "the maker's range of cells",
  bad: `
dryfit: build
name: Example
parts:
  motors:
    cells: 3S-4S
packs:
  main:
    cells: «6S»
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    cells: 3S-4S
packs:
  main:
    cells: 4S
`,
};
