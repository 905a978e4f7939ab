/** The propellers are of one hand only; half of the motors turn the other way. */

import { check } from '../check';

export default check({
  id: 'propellers-of-one-hand',
  group: 'propulsion',
  title: 'All propellers turn one way',
  severity: 'error',
  needs: { hand: 'propellers.rotation' },
  // Sets of both are what is sold.
  when: (craft) => craft.roles.propellers?.rotation !== undefined,
  judge({ hand }) {
    if (hand.value === 'set of both') return undefined;
    return {
      message: `All propellers turn ${hand.text}; half of the motors turn the other way. The craft would flip. Use a set of both hands.`,
    };
  },
});

export const explanation = {
  why: 'Propellers on motors of the other direction push downwards, and the craft flips.',
  remedy: 'Buy a set of both hands.',
  source: 'common practice: half of the propellers turn clockwise, half counter-clockwise',
  bad: `
dryfit: build
name: Example
parts:
  propellers:
    rotation: «clockwise»
`,
  good: `
dryfit: build
name: Example
parts:
  propellers:
    rotation: set of both
`,
};
