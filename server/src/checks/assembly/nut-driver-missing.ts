/** The bench has no driver for the propeller nuts. */

import { nutsOf } from '../../plan/assembly-screws';
import { fallsShort } from '../beyond';
import { check } from '../check';

export default check({
  id: 'nut-driver-missing',
  group: 'assembly',
  title: 'No driver for these nuts',
  severity: 'warning',
  needs: { nuts: 'bench.tools.nuts', shaft: 'motors.shaft' },
  judge({ nuts }, craft) {
    const tool = craft.bench?.tools?.['propeller-tool']?.value === true;
    return nutsOf(craft).flatMap(({ driver, at, thread, for: what }) => {
      if (driver === undefined || (tool && driver === 8)) return [];
      if (nuts.items.some((item) => fallsShort(Math.abs(item.value * 1000 - driver), 0.05))) return [];
      return [
        {
          at,
          apart: what,
          with: [{ fact: nuts, says: `the bench has ${nuts.text}` }],
          message: `M${thread} nuts are ${driver} mm across flats; your bench has drivers of ${nuts.text}. Get one, with a thin wall for nylon nuts.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Pliers slip, and what is half tight comes off in the air.',
  remedy: 'Get a driver of that size, or the propeller tool.',
  source: 'ISO 4032, ISO 10511: M5 is 8 mm across flats',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    shaft: «M5»
---
dryfit: bench
tools:
  nuts: 4 mm, 5.5 mm
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    shaft: M5
---
dryfit: bench
tools:
  nuts: 5.5 mm, 8 mm
`,
};
