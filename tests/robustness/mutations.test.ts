/** Seeded damage to every sample, through every feature: pieces lost, doubled, swapped, and characters that YAML minds. */
import { expect, it } from 'vitest';
import { damage } from '../support/damage';
import { sampleNames, sampleText, sampleUri, sampleWorkspace } from '../support/samples';
import { seeded } from '../support/seeded';
import { throughEverything } from '../support/through-everything';

const seed = Number(process.env.DRYFIT_SEED ?? 20261125);
const perSample = Number(process.env.DRYFIT_MUTATIONS ?? 150);
it.each(sampleNames)('%s', { timeout: Math.max(240_000, perSample * 500) }, (name) => {
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
