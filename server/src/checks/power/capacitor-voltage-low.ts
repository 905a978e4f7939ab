/** The rated voltage of the bulk capacitor is close to or below the full pack. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { ratio, volts } from '../words';

export default check({
  id: 'capacitor-voltage-low',
  group: 'power',
  title: 'Capacitor rated for too few volts',
  severity: 'error',
  danger: 'fire',
  needs: { rated: 'capacitor.voltage', full: 'worked.pack-full-voltage' },
  judge({ rated, full }) {
    const share = rated.value / full.value;
    const base = { at: rated, with: [{ fact: full, says: `${volts(full.value)} full` }] };
    const better = volts([16, 25, 35, 50, 63, 80].find((value) => value >= 1.5 * full.value) ?? 100);
    if (fallsShort(share, 1.1))
      return {
        ...base,
        message: `A ${rated.text} capacitor on a pack of ${volts(full.value)}: ${fallsShort(share, 1) ? 'it is above its rating as soon as it is plugged in' : 'braking alone lifts it above its rating'}. It vents. Use one for ${better}.`,
      };
    if (fallsShort(share, 1.3))
      return {
        ...base,
        severity: 'warning',
        danger: undefined,
        message: `A ${rated.text} capacitor on a pack of ${volts(full.value)} has ${ratio((share - 1) * 100)} % to spare; braking spikes go above that. Use one for ${better}.`,
      };
    if (fallsShort(share, 1.5))
      return {
        ...base,
        severity: 'information',
        danger: undefined,
        message: `A ${rated.text} capacitor on a pack of ${volts(full.value)} is what most fly. One for ${better} is safer against braking spikes when its legs are long.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'An electrolytic capacitor above its voltage vents hot electrolyte, at plug-in or in hard braking.',
  remedy: '35 V for four to six cells, 50 V for six to eight.',
  source: 'ratios of rated voltage to full pack of 1.1, 1.3 and 1.5: common practice; 35 V on six cells is universal',
  bad: `
dryfit: build
name: Example
parts:
  capacitor:
    voltage: «25 V»
packs:
  main:
    cells: 6S
`,
  good: `
dryfit: build
name: Example
parts:
  capacitor:
    voltage: 50 V
packs:
  main:
    cells: 6S
`,
};
