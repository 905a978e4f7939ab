/** The wires to the battery heat too much in a burst, or by the mean current. */

import { adiabaticRise, wireArea } from '../../physics';
import { chassisAmpacity } from '../../plan/ampacity';
import { check } from '../check';
import { amperes } from '../words';

export default check({
  id: 'lead-too-thin',
  group: 'power',
  title: 'Battery lead is too thin',
  severity: 'error',
  needs: { wire: 'battery-lead.wire', current: 'worked.pack-current' },
  may: { limit: 'flight.throttle-limit' },
  judge({ wire, current, limit }) {
    const peak = current.value.peak * Math.min(1, limit?.value ?? 1) ** 2;
    const mean = current.value.mean ?? 0;
    const rise = (gauge: number): number => adiabaticRise(peak, wireArea(gauge), 5);
    const hot = rise(wire.value);
    const carries = chassisAmpacity(wire.value);
    if (hot <= 60 && mean <= carries) return undefined;
    let better = wire.value;
    while (better > 0 && (rise(better) > 60 || mean > chassisAmpacity(better))) better -= 2;
    const base = { at: wire, with: [{ fact: current, says: `about ${amperes(peak)} at full throttle` }] };
    if (hot > 60)
      return {
        ...base,
        danger: hot > 150 ? 'fire' : undefined,
        severity: hot > 150 ? 'error' : hot > 90 ? 'warning' : 'information',
        message: `Five seconds at full throttle, about ${amperes(peak)}, warm a ${wire.text} lead by about ${Math.round(hot / 5) * 5} K. ${hot > 150 ? 'Solder and insulation give way.' : 'It takes voltage from the motors and tires the joints.'} Use ${better} AWG, as short as can be.`,
      };
    return {
      ...base,
      // The mean is off by about that much itself.
      severity: mean <= 1.25 * carries ? 'information' : 'warning',
      message: `The craft draws about ${amperes(mean)} on average; a ${wire.text} lead carries about ${amperes(carries)} without getting hot. Use ${better} AWG.`,
    };
  },
});

export const explanation = {
  why: 'Solder softens at 183 degrees and the voltage that is lost in the lead is thrust that is missing.',
  remedy: 'Use thicker, shorter silicone wire.',
  source:
    'ASTM B258 wire gauge; heating without heat loss for 5 s at full throttle; chassis ampacity of the Handbook of Electronic Tables and Formulas, as reprinted',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
  battery-lead:
    wire: «18 AWG»
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
  propellers:
    size: 5.1x4.3x3
  battery-lead:
    wire: 12 AWG
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
};
