/** Kv times the pack's voltage is far from what craft of this class fly. */
import { cellVoltage } from '../../plan/cell-voltage';
import { speedBand } from '../../plan/class-motors';
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { cellsOf } from '../words';

export default check({
  id: 'kv-off-for-cells',
  group: 'battery',
  title: "Motor speed and pack don't match the class",
  severity: 'warning',
  needs: { kv: 'motors.kv', cells: 'pack.cells', craft: 'build.craft' },
  may: { chemistry: 'pack.chemistry', limit: 'flight.throttle-limit' },
  judge({ kv, cells, craft, chemistry, limit }) {
    const band = speedBand(craft.value);
    if (!band) return undefined;
    const volts = cells.value.series * cellVoltage(chemistry?.value).nominal;
    const speed = kv.value * volts;
    const high = speed / band[1];
    const low = band[0] / speed;
    const off = Math.max(high, low);
    if (!exceeds(off, 1.1)) return undefined;
    const range = `${Math.round(band[0] / volts / 10) * 10} to ${Math.round(band[1] / volts / 10) * 10}`;
    const limited = high > 1 && limit !== undefined && fallsShort(limit.value, 0.95);
    const what = high > 1 ? 'Motors and ESCs get hot' : 'There is little thrust';
    return {
      at: kv,
      with: [
        { fact: cells, says: `a ${cellsOf(cells.value.series)} pack` },
        { fact: craft, says: `${craft.text} flies ${range} Kv on it` },
      ],
      severity: exceeds(off, 1.2) && !limited ? 'warning' : 'information',
      message: `${Math.round(kv.value)} Kv on ${cellsOf(cells.value.series)} turns ${Math.round(speed / 100) / 10} thousand a minute without load; ${craft.text} flies ${range} Kv on that pack. ${what}. Use a motor in that range, or another number of cells.${limited ? ' The throttle limit helps.' : ''}`,
    };
  },
});

export const explanation = {
  why: 'Too fast a motor draws too much and overheats, too slow a one has no thrust.',
  remedy: 'Take the Kv that the class flies on this number of cells, other cells, or limit the throttle.',
  source: 'what craft of each class fly, and a tenth and a fifth beyond: common practice',
  bad: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  motors:
    kv: «2600»
packs:
  main:
    cells: 6S
`,
  good: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  motors:
    kv: 1850
packs:
  main:
    cells: 6S
`,
};
