/** The craft needs much of its throttle only to hover. */

import { check } from '../check';
import { apart, percent } from '../words';

export default check({
  id: 'hover-throttle-high',
  group: 'propulsion',
  title: 'Hovers at high throttle',
  severity: 'warning',
  needs: { figures: 'worked.pack-figures', kv: 'motors.kv' },
  may: { duct: 'frame.duct-diameter' },
  judge({ figures, kv, duct }) {
    const { hover } = figures.value;
    if (!hover.ok) return undefined;
    const [fine, much] = duct ? [0.5, 0.6] : [0.45, 0.55];
    const throttle = hover.value.throttle.value;
    if (throttle <= fine) return undefined;
    const [needed, reserved] = apart(percent, throttle, fine);
    const { low } = hover.value.throttle;
    return {
      at: kv,
      severity: low > much ? 'warning' : 'information',
      message: `The craft hovers at about ${needed} throttle (typically from ${percent(low)} on); ${reserved} is the most that leaves a reserve for wind and turns. Save weight, or use more propeller, motor or cells.`,
    };
  },
});

export const explanation = {
  why: 'What hovering takes is missing in wind, in turns and with a tired pack.',
  remedy: 'Save weight, or take more propeller, motor or cells.',
  source: 'modelled throttle at half charge; 45 and 55 %, with ducts 50 and 60 %: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    weight: 450 g
  motors:
    stator: 1404
    kv: «3800»
  propellers:
    size: 3x2x3
packs:
  main:
    cells: 4S
    capacity: 850 mAh
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    weight: 60 g
  motors:
    stator: 1404
    kv: 3800
  propellers:
    size: 3x2x3
packs:
  main:
    cells: 4S
    capacity: 850 mAh
`,
};
