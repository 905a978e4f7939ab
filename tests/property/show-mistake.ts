/** Finds a sound generated build on which a check's own mistake shows: the bad example laid over it is found, the good one laid the same way is not. */
import { type Analysis, analyse } from '../../server/src/analysis';
import type { Finding } from '../../server/src/build/finding';
import type { Check } from '../../server/src/checks/check';
import { explanationOf } from '../../server/src/checks/generated/explanations';
import { Workspace } from '../../server/src/library/workspace';
import { analyseMarked } from '../support/marked';
import { luck } from './draw/luck';
import { benchUri, besideUri, buildUri, type GeneratedBuild, generated } from './generated-build';
import { isClass, type Pair, suits, type Way, waysFor } from './lay-over';
import { type Example, readExample } from './read-yaml';
import { seeds } from './seeds';
import { writeYaml } from './write-yaml';

export const tries = 60;
export const skipped = 5000;

export interface Shown {
  readonly seed: number;
  readonly way: Way;
  readonly base: Pair;
  readonly bad: Example;
  readonly good: Example;
}

/** A build as files, with its bench and what stands beside it. */
export function filesOf({ build, bench, beside = [] }: Pair, seed: number): ReadonlyMap<string, string> {
  const chance = luck(seed);
  return new Map([
    [buildUri, writeYaml(build, chance)],
    [benchUri, writeYaml(bench, chance)],
    ...beside.map((one, i) => [besideUri(i), writeYaml(one, chance)] as const),
  ]);
}

/** The files as one check sees them. */
export function judged(pair: Pair, seed: number, check: Check): Analysis {
  const workspace = new Workspace();
  for (const [uri, text] of filesOf(pair, seed)) workspace.set(uri, text);
  return analyse(workspace, buildUri, { checks: [check] })!;
}

const by = (analysis: Analysis, id: string): readonly Finding[] =>
  analysis.findings.filter(({ check }) => check === id);

/** `parts.motors` of `parts.motors.kv`: the part or section that is pointed at. */
const partOf = (path: string): string => path.split('.').slice(0, 2).join('.');

/** The parts at which a check finds its own bad example. */
export const markedParts = (check: Check): ReadonlySet<string> =>
  new Set(by(analyseMarked(explanationOf(check).bad).analysis, check.id).map((finding) => partOf(finding.at.path)));

export const finds = (pair: Pair, seed: number, check: Check, at: ReadonlySet<string>): boolean =>
  by(judged(pair, seed, check), check.id).some((finding) => at.has(partOf(finding.at.path)));

const known = new Map<string, Shown | undefined>();

/** Remembered by check, as several tests ask. */
export function shownMistake(check: Check): Shown | undefined {
  if (!known.has(check.id)) known.set(check.id, showMistake(check));
  return known.get(check.id);
}

const bases = new Map<string, GeneratedBuild>();

function drawn(seed: number, craft: string | undefined): GeneratedBuild {
  const name = `${seed} ${craft}`;
  const base = bases.get(name) ?? generated(seed, craft);
  bases.set(name, base);
  return base;
}

function showMistake(check: Check): Shown | undefined {
  const [bad, good] = [readExample(explanationOf(check).bad), readExample(explanationOf(check).good)];
  const at = markedParts(check);
  const craft = isClass(bad.build.craft) ? bad.build.craft : undefined;
  // Plain ways on every build first: a build that has lost a part is the longer way round.
  for (const few of [true, false])
    for (const seed of seeds(few ? tries : tries / 4, skipped)) {
      const base = drawn(seed, craft);
      if (!suits(base, bad) || finds(base, seed, check, at)) continue;
      for (const way of waysFor(base, few)) {
        if (!finds(way.lay(base, bad, bad), seed, check, at)) continue;
        const mended = way.lay(base, good, bad);
        if (judged(mended, seed, check).ran.includes(check.id) && !finds(mended, seed, check, at))
          return { seed, way, base, bad, good };
      }
    }
  return undefined;
}
