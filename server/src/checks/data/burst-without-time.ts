/** A short-time current is said without how long it may flow. */

import { check } from '../check';

export default check({
  id: 'burst-without-time',
  group: 'data',
  title: 'Burst current without a time',
  severity: 'information',
  needs: {},
  may: { esc: 'esc.burst', motor: 'motors.peak-current' },
  when: (craft) => craft.roles.esc?.burst !== undefined || craft.roles.motors?.['peak-current'] !== undefined,
  judge({ esc, motor }) {
    return [esc, motor].flatMap((fact) =>
      fact && fact.value.duration === undefined
        ? [
            {
              at: fact,
              apart: fact.at.path,
              message: `${fact.text}, but for how long? Write the time as in \`${fact.text} for 10 s\`, if the maker names it.`,
            },
          ]
        : [],
    );
  },
});

export const explanation = {
  why: "A figure for one second and one for a minute differ by half; a product's name tells neither.",
  remedy: 'Write the time, as in 60 A for 10 s.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    burst: «60 A»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    burst: 60 A for 10 s
`,
};
