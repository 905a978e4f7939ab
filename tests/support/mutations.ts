/** The tests with seeded damage to some samples, shared by several test files so that several cores can run them. */
import { expect, it } from 'vitest';
import { type Analysis, analyse } from '../../server/src/analysis';
import { damage } from './damage';
import { sampleNames, sampleText, sampleUri, sampleWorkspace } from './samples';
import { seeded } from './seeded';
import { throughEverything } from './through-everything';

const seed = Number(process.env.DRYFIT_SEED ?? 20261125);
const perSample = Number(process.env.DRYFIT_MUTATIONS ?? 2000);

export const mutationTests = (chosen: (name: string) => boolean): void =>
  it.each(sampleNames.filter(chosen))('%s', { timeout: Math.max(240_000, perSample * 500) }, (name) => {
    const chance = seeded(seed + name.length * 7919);
    const text = sampleText(name);
    const workspace = sampleWorkspace();
    let different = 0;
    let before: Analysis | undefined;
    for (let i = 0; i < perSample; i++) {
      const damaged = damage(text, chance);
      if (damaged !== text) different++;
      try {
        before = throughEverything(workspace, sampleUri(name), damaged, chance.below(damaged.length + 1), before);
        // Whatever was taken over from another damaged text: it is what a fresh look finds.
        if (i % 25 === 0) expect(before.findings).toEqual(analyse(workspace, sampleUri(name))!.findings);
      } catch (error) {
        throw new Error(`seed ${seed}, ${name}, mutation ${i}: ${(error as Error).stack}\n${damaged}`);
      }
    }
    expect(different).toBeGreaterThan(perSample / 2);
  });
