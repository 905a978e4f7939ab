/** The bench has no key for a screw of this craft. */

import { screwsOf } from '../../plan/assembly-screws';
import { fallsShort } from '../beyond';
import { check } from '../check';

export default check({
  id: 'hex-driver-missing',
  group: 'assembly',
  title: 'No key for these screws',
  severity: 'warning',
  needs: { hex: 'bench.tools.hex', motors: 'motors.screws' },
  judge({ hex }, craft) {
    const seen = new Set<number>();
    return screwsOf(craft).flatMap(({ key, sure, at, text }) => {
      if (
        key === undefined ||
        seen.has(key) ||
        hex.items.some((item) => fallsShort(Math.abs(item.value * 1000 - key), 0.05))
      )
        return [];
      seen.add(key);
      return [
        {
          at,
          apart: String(key),
          severity: sure ? ('warning' as const) : ('information' as const),
          with: [{ fact: hex, says: `the bench has ${hex.text}` }],
          message: `${text} ${sure ? 'needs' : 'usually takes'} a hex key of ${key.toFixed(1)} mm; your bench has ${hex.text}. ${sure ? 'A near size rounds the socket. Get one.' : 'Some come with another drive: look at the screw, then get what fits.'}`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'A key half a size off rounds the socket, and the motor stays on.',
  remedy: 'Get the key; a sharp one costs less than a drilled-out screw.',
  source: 'ISO 4762, ISO 7380-1, ISO 10642; smaller heads: trade habit',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    screws: «M3x8 button»
---
dryfit: bench
tools:
  hex: 1.5 mm, 2.5 mm
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    screws: M3x8 button
---
dryfit: bench
tools:
  hex: 1.5 mm, 2.0 mm
`,
};
