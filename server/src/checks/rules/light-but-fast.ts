/** The craft is below the weight of the lightest category, and faster than that category. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { dated, profileFor } from '../region';
import { apart, grams } from '../words';

export default check({
  id: 'light-but-fast',
  group: 'rules',
  title: 'Light craft that is too fast to count as light',
  severity: 'information',
  needs: { weight: 'worked.pack-weight' },
  may: { top: 'goals.top-speed', values: 'worked.pack-values', limit: 'flight.throttle-limit' },
  when: (craft) => profileFor(craft)?.lightCraft !== undefined,
  judge({ weight, top, values, limit }, craft) {
    const profile = profileFor(craft);
    const light = profile?.lightCraft;
    if (!profile || !light || !fallsShort(weight.value.ready.value, light.mass)) return undefined;
    const [weighs, limitSaid] = apart(grams, weight.value.ready.value, light.mass);
    const full = values?.value.full;
    const air = full?.ok ? full.value.pitchSpeed * Math.min(1, limit?.value ?? 1) : undefined;
    // A propeller reaches about four fifths of its pitch speed at best; ask only where there is no doubt.
    const fast = top ? !fallsShort(top.value, light.speed) : air !== undefined && 0.8 * air > light.speed * 1.3;
    if (!fast) return undefined;
    const speed = top
      ? `${top.text} are written`
      : `the model has the air leave the propellers at about ${Math.round(air!)} m/s`;
    return {
      at: top ?? weight,
      severity: top ? 'warning' : 'information',
      message: `At about ${weighs} the craft is below ${limitSaid}, but your profile counts a home-built craft as light only below ${light.speed} m/s; ${speed}. Then it flies far from people. ${top ? '' : 'Write the measured `top-speed` under `goals`. '}${dated(profile)}`,
    };
  },
});

export const explanation = {
  why: 'In the profile the lightest category has a speed besides its weight; faster craft fly under the rules of heavy ones.',
  remedy: 'Write down the measured top speed, or limit the throttle.',
  source: 'dated profiles in plan/rules.ts, each with its source; speed from the model when none is written',
  bad: `
dryfit: build
name: Example
region: EU
parts:
  frame:
    weight: 100 g
packs:
  main:
    cells: 4S
    weight: 80 g
goals:
  top-speed: «35 m/s»
`,
  good: `
dryfit: build
name: Example
region: EU
parts:
  frame:
    weight: 100 g
packs:
  main:
    cells: 4S
    weight: 80 g
goals:
  top-speed: 18 m/s
`,
};
