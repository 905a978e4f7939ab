/** Seeded damage to a text: pieces lost, doubled, swapped, and characters that YAML minds. */
import type { Chance } from './seeded';

const spice = [
  ':',
  ': ',
  '- ',
  '\n',
  '\t',
  '#',
  ' #',
  '{',
  '}',
  '[',
  ']',
  '&a ',
  '*a',
  '<<: *a',
  '"',
  "'",
  '|',
  '>',
  '%',
  '@',
  '`',
  '!',
  '---\n',
  '\u0000',
  '\ud83d',
  'é',
  '0',
  '-1',
  '1e999',
  'null',
  '~',
  'use: ',
  'dryfit: parts\n',
  '__proto__: 1\n',
  'constructor:\n',
];

export function damage(text: string, chance: Chance): string {
  let out = text;
  for (let n = 1 + chance.below(3); n > 0; n--) {
    const at = chance.below(out.length + 1);
    const length = chance.below(12);
    const other = chance.below(out.length + 1);
    const ways = [
      () => out.slice(0, at) + out.slice(at + length),
      () => out.slice(0, at) + chance.pick(spice) + out.slice(at),
      () => out.slice(0, at) + chance.pick(spice) + out.slice(at + length),
      () => out.slice(0, at) + out.slice(other, other + length * 8) + out.slice(at),
      () => out.slice(0, at) + out.slice(at).toUpperCase(),
      () => out.replace(/\n/g, (line) => (chance.below(20) === 0 ? '' : line)),
    ];
    out = chance.pick(ways)();
  }
  return out;
}
