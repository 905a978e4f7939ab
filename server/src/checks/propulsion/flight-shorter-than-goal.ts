/** The flight time as the craft is flown stays below the goal. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { apart, minutes } from '../words';

export default check({
  id: 'flight-shorter-than-goal',
  group: 'propulsion',
  title: 'Flight is shorter than wanted',
  severity: 'warning',
  needs: { goal: 'goals.minutes', figures: 'worked.pack-figures' },
  when: (craft) => craft.said.goals?.minutes !== undefined,
  judge({ goal, figures }) {
    const { asFlown } = figures.value;
    if (!asFlown.ok) return undefined;
    const typical = asFlown.value.minutes.value;
    const wanted = goal.value / 60;
    if (!fallsShort(typical, wanted)) return undefined;
    const { high } = asFlown.value.minutes;
    const [lasts, goalSaid] = apart(minutes, typical, wanted);
    const most = apart(minutes, high, wanted)[0];
    return {
      at: goal,
      with: [{ fact: figures, says: `about ${lasts} on this pack` }],
      severity: high < wanted ? 'warning' : 'information',
      message: `As it is flown this pack lasts about ${lasts}, up to ${most}; ${goalSaid} are wanted. A larger pack helps as long as its weight does not eat the gain; a flatter propeller and less weight help always.`,
    };
  },
});

export const explanation = {
  why: 'The goal was written down for a reason.',
  remedy: 'Compare a larger pack, a flatter propeller and less weight; more battery eats part of its own gain.',
  source: 'modelled flight time for the mix that is flown',
  bad: `
dryfit: build
name: Example
craft: freestyle-5
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
goals:
  minutes: «20 min»
`,
  good: `
dryfit: build
name: Example
craft: freestyle-5
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
goals:
  minutes: 2 min
`,
};
