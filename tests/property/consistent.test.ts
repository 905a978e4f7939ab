/** A thousand builds that are sound by the trade's rules: none is warned about, and every check really compared something on many of them. */
import { beforeAll, describe, expect, it } from 'vitest';
import { allChecks } from '../../server/src/checks/generated/all';
import { analysed, generated } from './generated-build';
import { known } from './known';
import { seeds } from './seeds';

const count = 1000;
const leastRuns = 20;

interface Spoken {
  readonly seed: number;
  readonly check: string;
  readonly words: string;
  readonly known: boolean;
}

const spoken: Spoken[] = [];
const crashed: string[] = [];
const ran = new Map<string, number>();
const seen = { classes: new Set<string>(), files: new Set<number>(), styles: new Set<string>() };

beforeAll(() => {
  for (const seed of seeds(count)) {
    const build = generated(seed);
    const { findings, ran: ids } = analysed(build.files);
    seen.classes.add(build.choices.craft.name);
    seen.files.add([...build.files.keys()].filter((uri) => !uri.includes('/beside/')).length);
    for (const text of build.files.values()) if (/^ +\S+: \{ /m.test(text)) seen.styles.add('flow');
    for (const id of ids) ran.set(id, (ran.get(id) ?? 0) + 1);
    for (const { check, severity, accepted, at, message } of findings) {
      if (check === 'check-crashed') crashed.push(`seed ${seed}: ${message}`);
      if (severity === 'information' || accepted !== undefined) continue;
      spoken.push({
        seed,
        check,
        words: `seed ${seed}, ${build.choices.craft.name}: ${severity} ${check} at ${at.path}: ${message}`,
        known: known.some((one) => one.check === check && one.applies(build.choices)),
      });
    }
  }
}, 120_000);

describe('on a thousand consistent builds', () => {
  it('says neither error nor warning', () => {
    expect(spoken.filter((one) => !one.known).map((one) => one.words)).toEqual([]);
  });

  it('lets no check fail', () => {
    expect(crashed).toEqual([]);
  });

  it.each(allChecks.map(({ id }) => id))(`runs %s on ${leastRuns} of them at least`, (id) => {
    expect(ran.get(id) ?? 0, `seeds from ${seeds(1)[0]}`).toBeGreaterThanOrEqual(leastRuns);
  });

  it('keeps no excuse that is no longer needed', () => {
    const idle = known.filter(({ check, seed, applies }) => {
      const build = generated(seed);
      const grave = analysed(build.files).findings.filter(
        (one) => one.check === check && one.severity !== 'information',
      );
      return grave.length === 0 || !applies(build.choices);
    });
    expect(idle.map(({ check, seed }) => `${check}: nothing wrong is said on seed ${seed} any more`)).toEqual([]);
  });

  it('drew every class, with and without parts files, in blocks and in braces', () => {
    expect(seen.classes.size).toBe(10);
    expect([...seen.files].sort()).toEqual([2, 3]);
    expect([...seen.styles]).toEqual(['flow']);
  });
});
