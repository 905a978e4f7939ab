/** The charger has no mode for the chemistry of the pack. */

import { check } from '../check';

export default check({
  id: 'charger-mode-missing',
  group: 'battery',
  title: 'Charger has no mode for this chemistry',
  severity: 'warning',
  needs: { chemistry: 'pack.chemistry', modes: 'bench.charger.chemistries' },
  judge({ chemistry, modes }) {
    const has = modes.items.map((item) => item.value);
    if (has.includes(chemistry.value)) return undefined;
    const says = [{ fact: modes, says: `the charger has ${modes.text}` }];
    if (chemistry.value === 'LiHV' && has.includes('LiPo'))
      return {
        with: says,
        severity: 'information',
        message:
          'Your charger has no mode for high-voltage packs. Charged as LiPo to 4.20 V they are safe and hold about a tenth less.',
      };
    return {
      with: says,
      message: `Your charger has modes for ${modes.text}; this pack is ${chemistry.text}. Charged in another mode it ends at a wrong voltage. Use a charger with that mode.`,
    };
  },
});

export const explanation = {
  why: 'A wrong mode charges to a wrong voltage: too high burns, too low gives away capacity.',
  remedy: 'Charge high-voltage packs in LiPo mode to 4.20 V, or take a charger with the mode.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    chemistry: «Li-ion»
---
dryfit: bench
charger:
  chemistries: LiHV
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    chemistry: LiPo
---
dryfit: bench
charger:
  chemistries: LiPo, LiHV
`,
};
