/** Every check on a generated build that has its mistake: the check's own bad example laid over a sound build is found there, the good one is not. A new check needs nothing here. */
import { describe, expect, it } from 'vitest';
import type { Analysis } from '../../server/src/analysis';
import type { Finding } from '../../server/src/build/finding';
import { allChecks } from '../../server/src/checks/generated/all';
import { analyseMarked } from '../support/marked';
import { luck } from './draw/luck';
import { analysed, benchUri, buildUri, generated } from './generated-build';
import { isClass, type Pair, suits, type Way, waysFor } from './lay-over';
import { type Example, readExample } from './read-yaml';
import { seeds } from './seeds';
import { writeYaml } from './write-yaml';

const tries = 60;

function laid(pair: Pair, seed: number): Analysis {
  const chance = luck(seed);
  return analysed(
    new Map([
      [buildUri, writeYaml(pair.build, chance)],
      [benchUri, writeYaml(pair.bench, chance)],
    ]),
  );
}

const by = (analysis: Analysis, id: string): readonly Finding[] =>
  analysis.findings.filter(({ check }) => check === id);

/** `parts.motors` of `parts.motors.kv`: the part or section that is pointed at. */
const part = (path: string): string => path.split('.').slice(0, 2).join('.');

interface Shown {
  readonly seed: number;
  readonly way: Way;
}

/** A sound build and a way in which the bad example is found at the part it marks, while the good one, laid the same way, is not. */
function show(id: string, bad: Example, good: Example, marked: ReadonlySet<string>): Shown | undefined {
  const craft = isClass(bad.build.craft) ? bad.build.craft : undefined;
  for (const seed of seeds(tries, 5000)) {
    const base = generated(seed, craft);
    if (!suits(base, bad)) continue;
    if (by(laid(base, seed), id).some((finding) => marked.has(part(finding.at.path)))) continue;
    for (const way of waysFor(base)) {
      const found = by(laid(way.lay(base, bad), seed), id);
      if (!found.some((finding) => marked.has(part(finding.at.path)))) continue;
      const better = laid(way.lay(base, good), seed);
      const left = by(better, id).filter((finding) => marked.has(part(finding.at.path)));
      if (better.ran.includes(id) && left.length === 0) return { seed, way };
    }
  }
  return undefined;
}

describe('each check finds its mistake on a build that is sound otherwise', () => {
  it.each(allChecks.map((check) => [check.id, check] as const))('%s', { timeout: 60_000 }, (id, check) => {
    const [bad, good] = [readExample(check.bad), readExample(check.good)];
    expect(bad.other || good.other, 'examples are builds, with a bench at most').toBe(false);
    const marked = new Set(by(analyseMarked(check.bad).analysis, id).map((finding) => part(finding.at.path)));
    expect(
      show(id, bad, good, marked),
      `${id}: over none of ${tries} sound builds from seed ${seeds(1, 5000)[0]} is the bad example found at ${[...marked].join(', ')} while the good one is not. Say in both examples all that the mistake needs.`,
    ).toBeDefined();
  });
});
