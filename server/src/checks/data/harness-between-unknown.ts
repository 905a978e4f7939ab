/** The cable names a part that this build does not have. */

import { check } from '../check';

export default check({
  id: 'harness-between-unknown',
  group: 'data',
  title: 'Cable between parts that are not there',
  severity: 'warning',
  needs: { between: 'harness.between' },
  when: (craft) => craft.roles.harness?.between !== undefined,
  judge({ between }, craft) {
    const roles = craft.roles as Readonly<Record<string, unknown>>;
    return between.items.flatMap((item) =>
      roles[item.value] === undefined
        ? [
            {
              at: item,
              apart: item.value,
              message: `The cable leads to \`${item.value}\`, which this build does not have. Name the parts by their roles, as in \`esc, flight-controller\`.`,
            },
          ]
        : [],
    );
  },
});

export const explanation = {
  why: 'A cable that joins nothing is not checked.',
  remedy: 'Name the roles of the parts as they stand in the build.',
  source: 'the parts of the build',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
  flight-controller:
    mcu: F722
  harness:
    between: esc, «board»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
  flight-controller:
    mcu: F722
  harness:
    between: esc, flight-controller
`,
};
