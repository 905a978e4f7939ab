/** None of the rows of the thrust table was measured with the propeller of this craft. */

import { sameSize } from '../../plan/flight-input';
import { check } from '../check';

export default check({
  id: 'thrust-table-unused',
  group: 'data',
  title: 'Thrust table of another propeller',
  severity: 'information',
  needs: { table: 'motors.thrust-table', size: 'propellers.size' },
  when: (craft) => craft.roles.motors?.['thrust-table'] !== undefined,
  judge({ table, size }) {
    const same = table.items.some(({ propeller }) => sameSize(propeller?.value, size.value));
    if (same) return undefined;
    return {
      at: size,
      with: [{ fact: table, says: 'the rows of the table' }],
      message: `No row of the motor's thrust table was measured with ${size.text}. The figures come from the model. Add a row with this propeller if there is one.`,
    };
  },
});

export const explanation = {
  why: 'Rows of another propeller tell nothing about this one; the model is used instead.',
  remedy: 'Add a row with this propeller.',
  source: 'how the figures are made: a millimetre of diameter and three of pitch count as the same propeller',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    thrust-table:
      - propeller: 5.1x3.6x3
        voltage: 24 V
        thrust: 1480 g
  propellers:
    size: «5x4.5x3»
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    thrust-table:
      - propeller: 5.1x3.6x3
        voltage: 24 V
        thrust: 1480 g
  propellers:
    size: 5.1x3.6x3
`,
};
