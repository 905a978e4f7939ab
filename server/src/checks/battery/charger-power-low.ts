/** The charger has too little power or current to charge the pack at one C. */

import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { amperes, apart, volts, watts } from '../words';

export default check({
  id: 'charger-power-low',
  group: 'battery',
  title: 'Charger is slow for this pack',
  severity: 'information',
  needs: { capacity: 'pack.capacity', full: 'worked.pack-full-voltage' },
  may: { power: 'bench.charger.power', current: 'bench.charger.current' },
  when: (craft) => craft.bench?.charger?.power !== undefined || craft.bench?.charger?.current !== undefined,
  judge({ capacity, full, power, current }) {
    const wanted = capacity.value;
    const gives = Math.min(
      current?.value ?? Number.POSITIVE_INFINITY,
      power ? power.value / full.value : Number.POSITIVE_INFINITY,
    );
    if (!fallsShort(gives, wanted)) return undefined;
    const [takes, reaches] = apart(amperes, wanted, gives);
    const limit = power && !exceeds(power.value / full.value, gives) ? power : current;
    return {
      at: capacity,
      with: limit ? [{ fact: limit, says: `the charger gives ${limit.text}` }] : [],
      message: `Charged in an hour this pack takes ${takes} at up to ${volts(full.value)}, ${watts(wanted * full.value)}; your charger reaches ${reaches}. A full charge takes about ${Math.round((wanted / gives) * 60)} minutes. That is slow, not harmful.`,
    };
  },
});

export const explanation = {
  why: 'A full charge takes longer than the hour that packs are made for.',
  remedy: 'Charge fewer packs at once, or take a stronger charger.',
  source: 'power is full voltage x capacity at one C',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    capacity: «5000 mAh»
---
dryfit: bench
charger:
  power: 80 W
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    capacity: 3000 mAh
---
dryfit: bench
charger:
  power: 80 W
`,
};
