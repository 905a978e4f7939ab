/** The craft is above the weight from which the region's profile expects a broadcast of its identity, and has no module. */

import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { dated, profileFor } from '../region';
import { apart, grams } from '../words';

export default check({
  id: 'remote-id-expected',
  group: 'rules',
  title: 'Your profile expects identification by radio',
  severity: 'information',
  needs: { weight: 'worked.pack-weight' },
  when: (craft) => profileFor(craft)?.remoteId !== undefined && craft.roles['remote-id'] === undefined,
  judge({ weight }, craft) {
    const profile = profileFor(craft);
    const expected = profile?.remoteId;
    if (!profile || !expected) return undefined;
    const { limit, below, from } = expected;
    const { value } = weight.value.ready;
    if (below === 'below' ? fallsShort(value, limit) : !exceeds(value, limit)) return undefined;
    const [weighs, most] = apart(grams, value, limit);
    return {
      at: weight,
      message: `Ready to fly with this pack the craft weighs about ${weighs}. Your profile expects a broadcast of its identity ${below === 'below' ? `of ${most} and more` : `above ${most}`}${from ? `, from ${from} on` : ''}. Add a \`remote-id\` module with its weight, or fly where none is expected. ${dated(profile)}`,
    };
  },
});

export const explanation = {
  why: 'A module costs 7 to 20 g, a place and sometimes a serial port; that is better known before buying.',
  remedy: 'Add a module with its weight, or fly where none is expected.',
  source: 'dated profiles in plan/rules.ts, each with its source',
  bad: `
dryfit: build
name: Example
region: US
parts:
  frame:
    weight: 300 g
packs:
  main:
    cells: «6S»
    weight: 200 g
`,
  good: `
dryfit: build
name: Example
region: US
parts:
  frame:
    weight: 130 g
packs:
  main:
    cells: 4S
    weight: 80 g
`,
};
