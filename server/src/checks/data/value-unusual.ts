/** A value is far outside the range that parts of this kind have. */

import { check } from '../check';
import { unusualValues } from '../unusual';

export default check({
  id: 'value-unusual',
  group: 'data',
  title: 'Value outside what the trade uses',
  severity: 'warning',
  needs: {},
  judge: (_, craft) =>
    unusualValues(craft).map(({ fact, least, most, far }) => ({
      at: fact,
      apart: fact.at.path,
      severity: far ? ('warning' as const) : ('information' as const),
      message: `${fact.text} is unusual here; ${least} to ${most} is what such parts have. Look at the unit and the digits again.`,
    })),
});

export const explanation = {
  why: 'A zero too many or a wrong unit makes every figure that rests on it wrong, without any other sign.',
  remedy: 'Look at the unit and the digits again.',
  source: 'the range of each field in schemas/: common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    capacity: «130000 mAh»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    capacity: 1300 mAh
`,
};
