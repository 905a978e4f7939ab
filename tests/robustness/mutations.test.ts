/** Seeded damage to every sample, through every feature: pieces lost, doubled, swapped, and characters that YAML minds. */
import { expect, it } from 'vitest';
import { sampleNames, sampleText, sampleUri, sampleWorkspace } from '../support/samples';
import { type Chance, seeded } from '../support/seeded';
import { throughEverything } from '../support/through-everything';

const seed = Number(process.env.DRYFIT_SEED ?? 20261125);
const perSample = Number(process.env.DRYFIT_MUTATIONS ?? 150);
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

function damage(text: string, chance: Chance): string {
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

it.each(sampleNames)('%s', { timeout: 240_000 }, (name) => {
  const chance = seeded(seed + name.length * 7919);
  const text = sampleText(name);
  const workspace = sampleWorkspace();
  let different = 0;
  for (let i = 0; i < perSample; i++) {
    const damaged = damage(text, chance);
    if (damaged !== text) different++;
    try {
      throughEverything(workspace, sampleUri(name), damaged, chance.below(damaged.length + 1));
    } catch (error) {
      throw new Error(`seed ${seed}, ${name}, mutation ${i}: ${(error as Error).stack}\n${damaged}`);
    }
  }
  expect(different).toBeGreaterThan(perSample / 2);
});
