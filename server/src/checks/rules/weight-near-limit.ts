/** The weight may lie on either side of a limit of the region's profile. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { dated, hasProfile, profileFor } from '../region';
import { apart, grams } from '../words';

export default check({
  id: 'weight-near-limit',
  group: 'rules',
  title: 'Weight near a limit of your profile',
  severity: 'information',
  needs: { weight: 'worked.pack-weight' },
  when: hasProfile,
  judge({ weight }, craft) {
    const profile = profileFor(craft);
    if (!profile) return undefined;
    const { value, low, high } = weight.value.ready;
    // A scale decides; a sum of parts leaves room.
    const near = profile.masses.filter(({ limit }) =>
      weight.value.weighed
        ? fallsShort(Math.abs(value - limit), 0.001)
        : fallsShort(low, limit) && !fallsShort(high, limit),
    );
    return near.map(({ limit, below, changes }) => ({
      at: weight,
      apart: grams(limit),
      message: `Ready to fly with this pack the craft weighs ${apart(grams, low, limit)[0]} to ${apart(grams, high, limit)[0]}. Your profile says that ${below === 'below' ? 'from' : 'above'} ${grams(limit)} on ${changes}. Weigh it with pack, propellers and strap. ${dated(profile)}`,
    }));
  },
});

export const explanation = {
  why: 'A few grams of straps and propellers decide which side of the limit the craft is on.',
  remedy: 'Weigh the craft with pack, propellers and strap, or save some grams.',
  source: 'dated profiles in plan/rules.ts, each with its source; a gram for what a scale reads: common practice',
  bad: `
dryfit: build
name: Example
region: EU
parts:
  frame:
    weight: 130 g
packs:
  main:
    cells: «4S»
    weight: 115 g
`,
  good: `
dryfit: build
name: Example
region: EU
parts:
  frame:
    weight: 130 g
packs:
  main:
    cells: 4S
    weight: 80 g
`,
};
