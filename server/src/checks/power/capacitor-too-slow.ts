/** The capacitor has long legs or is not of the low-ESR kind. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, millimetres } from '../words';

export default check({
  id: 'capacitor-too-slow',
  group: 'power',
  title: 'Capacitor cannot catch spikes',
  severity: 'information',
  needs: {},
  may: { leads: 'capacitor.leads', fast: 'capacitor.low-esr' },
  when: (craft) => craft.roles.capacitor?.leads !== undefined || craft.roles.capacitor?.['low-esr'] !== undefined,
  judge({ leads, fast }) {
    const long = leads !== undefined && exceeds(leads.value, 20e-3);
    if (long)
      return {
        at: leads,
        message: `Legs of ${apart(millimetres, leads.value, 20e-3)[0]} keep the capacitor from catching spikes; 20 mm is the most that works. Move it to the battery pads, or use twisted thick wire.`,
      };
    if (fast?.value === false)
      return {
        at: fast,
        message: 'An ordinary capacitor is too slow for the spikes of an ESC. Use one sold as low-ESR.',
      };
    return undefined;
  },
});

export const explanation = {
  why: 'Spikes last microseconds: two centimetres of leg or an ordinary capacitor let them pass.',
  remedy: 'Use a low-ESR capacitor with legs as short as can be, straight at the battery pads.',
  source: 'common practice: legs of 20 mm at most',
  bad: `
dryfit: build
name: Example
parts:
  capacitor:
    leads: «40 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  capacitor:
    leads: 20 mm
    low-esr: yes
`,
};
