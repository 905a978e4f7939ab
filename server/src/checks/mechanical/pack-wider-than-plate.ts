/** The pack is much wider than the plate it lies on. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'pack-wider-than-plate',
  group: 'mechanical',
  title: 'Pack hangs over its plate',
  severity: 'warning',
  needs: { pack: 'pack.outside', plate: 'frame.battery-plate' },
  judge({ pack, plate }) {
    const wide = Math.min(pack.value.length, pack.value.width);
    const room = Math.min(plate.value.length, plate.value.width);
    if (!exceeds(wide, room + 10e-3)) return undefined;
    return {
      at: pack,
      with: [{ fact: plate, says: `the plate is ${millimetres(room)} wide` }],
      message: `The pack is ${millimetres(wide)} wide, the plate ${millimetres(room)}: it hangs over by ${millimetres((wide - room) / 2)} on each side. It turns under the strap and comes near the propellers. Use a narrower pack or a wider plate.`,
    };
  },
});

export const explanation = {
  why: 'A pack that hangs over turns under its strap and comes near the propellers.',
  remedy: 'Take a narrower pack, turn it lengthwise, or add a wider plate.',
  source: 'common practice: up to 10 mm of overhang hold under one strap',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    battery-plate: 110x32 mm
packs:
  main:
    outside: «75x45x38 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    battery-plate: 110x35 mm
packs:
  main:
    outside: 75x45x38 mm
`,
};
