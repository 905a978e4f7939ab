/** The iron is set far from what these joints take. */

import { check } from '../check';

export default check({
  id: 'iron-temperature-plan',
  group: 'assembly',
  title: 'Iron set too hot or too cold',
  severity: 'information',
  needs: { motors: 'motors.count', iron: 'bench.tools.iron-temperature' },
  judge({ motors, iron }) {
    const celsius = Math.round(iron.value);
    if (celsius >= 315 && celsius <= 400) return undefined;
    return {
      at: motors,
      with: [{ fact: iron, says: `set to ${iron.text}` }],
      severity: celsius >= 430 ? 'warning' : 'information',
      message: `The iron is usually set to ${iron.text}. Battery pads want 380 to 400 C, motor wires 360 to 390, signal pads 330 to 350 for two seconds. Set it for each kind of joint.`,
    };
  },
});

export const explanation = {
  why: 'Above about 430 C pads lift and flux burns; below 315 C the joint stays dull.',
  remedy: '380 to 400 C for battery pads, 330 to 350 C and two seconds for signal pads.',
  source: 'limits of 315 to 400 C and 430 C: common practice with leaded solder',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    count: «4»
---
dryfit: bench
tools:
  iron-temperature: 450 C
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
---
dryfit: bench
tools:
  iron-temperature: 380 C
`,
};
