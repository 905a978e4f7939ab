/** The firmware reads the ESC's current sensor with another scale than the ESC has. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { write } from '../edit';
import { ratio } from '../words';

export default check({
  id: 'current-scale-differs',
  group: 'power',
  title: "Current sensor scale is not the ESC's",
  severity: 'warning',
  needs: { esc: 'esc.sensor-scale' },
  may: { set: 'setup.sensor-scale', own: 'flight-controller.sensor-scale' },
  when: (craft) =>
    craft.said.setup?.['sensor-scale'] !== undefined ||
    craft.roles['flight-controller']?.['sensor-scale'] !== undefined,
  judge({ esc, set, own }) {
    const used = set ?? own;
    if (!used || used.value <= 0 || !exceeds(Math.abs(used.value / esc.value - 1), 0.1)) return undefined;
    const off =
      esc.value > used.value
        ? `${ratio(esc.value / used.value)} times too high`
        : `${ratio(used.value / esc.value)} times too low`;
    return {
      at: used,
      with: [{ fact: esc, says: `the ESC has ${esc.text}` }],
      severity: set ? 'warning' : 'information',
      message: `The ESC's current sensor has a scale of ${esc.text}, the firmware ${set ? 'is set to' : 'starts with'} ${used.text}: currents read ${off}. Set ${esc.text}, then correct it by what is charged back.${set ? '' : ' Write it down as `sensor-scale` under `setup`.'}`,
      fixes: set ? [write(set, esc.text)] : [],
    };
  },
});

export const explanation = {
  why: 'Consumed capacity and the warning that rests on it are off by the ratio of the two scales.',
  remedy: 'Set the scale of the ESC in the firmware; then correct it by what is charged back.',
  source:
    'published board pages with scales of 100, 179 and 400 mV per 10 A, as reported; a tenth of leeway, as scales are corrected by what is charged back: common practice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    sensor-scale: 179
setup:
  sensor-scale: «400»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    sensor-scale: 179
setup:
  sensor-scale: 170
`,
};
