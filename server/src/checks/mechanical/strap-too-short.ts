/** The strap is too short for the pack, or leaves too little to hold. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'strap-too-short',
  group: 'mechanical',
  title: 'Strap does not close round the pack',
  severity: 'warning',
  needs: { strap: 'strap.length', pack: 'pack.outside' },
  when: (_, pack) => pack?.facts.outside === undefined || pack.facts.outside.value.height !== undefined,
  judge({ strap, pack }) {
    const { length, width, height } = pack.value;
    const round = 2 * (Math.min(length, width) + (height ?? 0));
    const left = strap.value - round;
    if (!fallsShort(left, 60e-3)) return undefined;
    const short = fallsShort(left, 40e-3);
    return {
      at: strap,
      with: [{ fact: pack, says: `${millimetres(round)} round the pack` }],
      severity: short ? 'warning' : 'information',
      message: `A ${millimetres(strap.value)} strap leaves ${millimetres(left)} after going once round this pack; plate and pad take some of that. ${short ? 'It hardly closes.' : 'It closes with little to spare.'} Use one of ${millimetres(Math.ceil((round + 60e-3) / 10e-3) * 10e-3)} or more.`,
    };
  },
});

export const explanation = {
  why: "A strap that holds by a finger's width opens in a hard turn and the pack is gone.",
  remedy: 'Take the next longer strap.',
  source: "geometry; 40 mm for the plate and a hold of a finger's width, 60 mm for a good one: common practice",
  bad: `
dryfit: build
name: Example
parts:
  strap:
    length: «200 mm»
packs:
  main:
    outside: 75x38x45 mm
`,
  good: `
dryfit: build
name: Example
parts:
  strap:
    length: 230 mm
packs:
  main:
    outside: 75x38x45 mm
`,
};
