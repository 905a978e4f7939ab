/** The band of the radio control is not among those of the region's profile. */

import { check } from '../check';
import { dated, hasProfile, profileFor } from '../region';

export default check({
  id: 'link-band-outside-profile',
  group: 'rules',
  title: 'Control band outside your profile',
  severity: 'warning',
  needs: { band: 'receiver.band' },
  when: hasProfile,
  judge({ band }, craft) {
    const profile = profileFor(craft);
    if (!profile || band.items.some((item) => profile.controlBands.includes(item.value))) return undefined;
    return {
      at: band,
      message: `The radio control works on ${band.text}; your profile has ${profile.controlBands.join(', ')}. Use the version for your region. ${dated(profile)}`,
    };
  },
});

export const explanation = {
  why: 'One board often exists for 868 and for 915 MHz; the build for another continent sends where others listen.',
  remedy: 'Take the version for your region.',
  source: 'dated profiles in plan/rules.ts; bands from memory of the radio rules',
  bad: `
dryfit: build
name: Example
region: EU
parts:
  receiver:
    band: «915 MHz»
`,
  good: `
dryfit: build
name: Example
region: EU
parts:
  receiver:
    band: 868 MHz
`,
};
