/** Height and heat of the flying place make the air noticeably thinner than at sea level. */
import { airAt } from '../../physics';
import { fallsShort } from '../beyond';
import { check } from '../check';
import { percent } from '../words';

export default check({
  id: 'thin-air',
  group: 'propulsion',
  title: 'Thin air at the flying place',
  severity: 'information',
  needs: {},
  may: { height: 'flight.altitude', warmth: 'flight.temperature' },
  when: (craft) => craft.said.flight?.altitude !== undefined || craft.said.flight?.temperature !== undefined,
  judge({ height, warmth }) {
    const density = airAt(height?.value ?? 0, warmth && warmth.value + 273.15).density;
    const share = density / airAt().density;
    if (!fallsShort(share, 0.92)) return undefined;
    const at = height && height.value > 300 ? height : (warmth ?? height);
    return {
      at,
      message: `The air at the flying place has ${percent(share)} of its density at sea level, and thrust falls with it. The figures on the card are for that air; plan more reserve.`,
    };
  },
});

export const explanation = {
  why: 'Thrust falls with the density of the air, and the motors turn faster for it.',
  remedy: 'Plan more thrust to weight, or less load.',
  source: 'US Standard Atmosphere 1976; said below 92 % of the density at sea level: common practice',
  bad: `
dryfit: build
name: Example
flight:
  altitude: «2000 m»
`,
  good: `
dryfit: build
name: Example
flight:
  altitude: 500 m
`,
};
