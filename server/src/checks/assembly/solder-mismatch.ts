/** Lead-free solder at a temperature for leaded. */

import { fallsShort } from '../beyond';
import { check } from '../check';

export default check({
  id: 'solder-mismatch',
  group: 'assembly',
  title: 'Solder needs more heat',
  severity: 'information',
  needs: { motors: 'motors.count', solder: 'bench.tools.solder', iron: 'bench.tools.iron-temperature' },
  judge({ motors, solder, iron }) {
    const lead = /Pb/.test(solder.value);
    if (lead || !fallsShort(iron.value, 350)) return undefined;
    return {
      at: motors,
      with: [
        { fact: solder, says: solder.text },
        { fact: iron, says: `set to ${iron.text}` },
      ],
      message: `${solder.text} melts near 220 C and wets slowly; ${iron.text} is little for it. Set 370 C or more for these joints, with flux.`,
    };
  },
});

export const explanation = {
  why: 'Lead-free melts some 35 C higher and wets half as fast: dull joints on thick wire.',
  remedy: 'Set the iron higher, use flux, or leaded solder where your rules allow it.',
  source: 'melting: Sn63Pb37 183 C, SAC305 217 to 220 C; 350 C at the iron for it: common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    count: «4»
---
dryfit: bench
tools:
  solder: SAC305
  iron-temperature: 330 C
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
---
dryfit: bench
tools:
  solder: SAC305
  iron-temperature: 380 C
`,
};
