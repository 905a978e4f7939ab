/** What breaks first is bought without a spare. */

import { check } from '../check';

export default check({
  id: 'spare-missing',
  group: 'order',
  title: 'No spare of what breaks first',
  severity: 'information',
  needs: { motors: 'motors.stator', order: 'worked.order' },
  judge({ order }) {
    const of = (role: string) => order.value.needs.find((need) => need.role === role && need.need > 0);
    const [motors, propellers] = [of('motors'), of('propellers')];
    const bent = motors && motors.spares === 0 ? motors : undefined;
    const broken = propellers && propellers.pieces + propellers.spares < propellers.pieces * 4 ? propellers : undefined;
    if (!bent && !broken) return undefined;
    const wanted = [bent ? 'one motor more' : '', broken ? `propellers for four sets, ${broken.pieces * 3} more` : '']
      .filter(Boolean)
      .join(' and ');
    return {
      at: (bent ?? broken)!.at,
      message: `Crashes bend bells and break propellers, and a spare bought later is a parcel of its own. Order ${wanted}: \`spares:\` in the part.`,
    };
  },
});

export const explanation = {
  why: 'A bent bell or a broken propeller costs a week of waiting, and a second parcel.',
  remedy: 'Buy one motor more, and propellers for at least four sets.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    count: 4
    sold-as: «motor-a»
---
dryfit: shops
shops:
  pellam:
    flat: 5
    offers:
      motor-a:
        - price: 20
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    count: 4
    spares: 1
    sold-as: motor-a
---
dryfit: shops
shops:
  pellam:
    flat: 5
    offers:
      motor-a:
        - price: 20
`,
};
