/** A row of a thrust table gives more thrust than its electric power can make. */
import { airAt, idealHoverPower } from '../../physics';
import { fallsShort } from '../beyond';
import { check } from '../check';
import { apart, watts } from '../words';

export default check({
  id: 'thrust-row-impossible',
  group: 'data',
  title: 'Thrust figures that cannot be',
  severity: 'warning',
  needs: { table: 'motors.thrust-table' },
  when: (craft) => craft.roles.motors?.['thrust-table'] !== undefined,
  judge({ table }) {
    const density = airAt().density;
    return table.items.flatMap(({ propeller, voltage, thrust, current }) => {
      if (!propeller || !voltage || !thrust || !current) return [];
      const least = idealHoverPower(thrust.value, propeller.value.diameter, density);
      const taken = voltage.value * current.value;
      if (!fallsShort(taken, least)) return [];
      const [wanted, has] = apart(watts, least, taken);
      return [
        {
          at: thrust,
          apart: thrust.at.path,
          with: [{ fact: current, says: `${current.text} at ${voltage.text}` }],
          message: `${thrust.text} of thrust takes at least ${wanted} with this propeller; the row has ${has}. A figure in it is wrong. Look at its units and digits.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Measured rows beat the model; a slip in one of them makes every figure wrong.',
  remedy: "Look at the row's units and digits again.",
  source: 'momentum theory: the least power for a thrust with a propeller of this size',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    thrust-table:
      - propeller: 5.1x3.6x3
        voltage: 24 V
        thrust: «1480 g»
        current: 2.6 A
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
        current: 32 A
`,
};
