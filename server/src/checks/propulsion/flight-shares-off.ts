/** The shares of hovering, cruising and punching do not make one flight. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { percent } from '../words';

export default check({
  id: 'flight-shares-off',
  group: 'propulsion',
  title: 'Shares of the flight do not add up',
  severity: 'warning',
  needs: { hover: 'flight.hover', cruise: 'flight.cruise', punch: 'flight.punch' },
  when: (craft) =>
    craft.said.flight?.hover !== undefined &&
    craft.said.flight.cruise !== undefined &&
    craft.said.flight.punch !== undefined,
  judge({ hover, cruise, punch }) {
    const sum = hover.value + cruise.value + punch.value;
    if (!exceeds(Math.abs(sum - 1), 0.01)) return undefined;
    return {
      at: punch,
      with: [
        { fact: hover, says: hover.text },
        { fact: cruise, says: cruise.text },
      ],
      message: `Hovering, cruising and punching make ${percent(sum)} of the flight. The flight time is worked out from them. Let them add up to 100 %.`,
    };
  },
});

export const explanation = {
  why: 'The flight time rests on these shares.',
  remedy: 'Let the three add up to 100 %.',
  source: 'arithmetic of the three shares; one percent of leeway, as three thirds are 99 %',
  bad: `
dryfit: build
name: Example
flight:
  hover: 30 %
  cruise: 60 %
  punch: «30 %»
`,
  good: `
dryfit: build
name: Example
flight:
  hover: 30 %
  cruise: 60 %
  punch: 10 %
`,
};
