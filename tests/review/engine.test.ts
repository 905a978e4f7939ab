/** Laws of any review, on samples damaged by seeded chance: a version against itself says nothing, there and back again agree, nothing throws. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { figuresOfCard } from '../../server/src/report/review-figures';
import { reviewAsJson } from '../../server/src/report/review-json';
import { reviewAsMarkdown } from '../../server/src/report/review-markdown';
import { reviewAsSvg } from '../../server/src/report/review-svg';
import { reviewAsText } from '../../server/src/report/review-text';
import { reviewAsView } from '../../server/src/report/review-view';
import { isSignificant } from '../../server/src/review/figures';
import { review } from '../../server/src/review/review';
import type { Texts } from '../../server/src/review/texts';
import { sampleNames, sampleText, sampleUri } from '../support/samples';
import { type Chance, seeded } from '../support/seeded';

const samples: Texts = new Map(sampleNames.map((name) => [sampleUri(name), sampleText(name)]));
const seed = Number(process.env.DRYFIT_SEED ?? 7);

const between = (before: Texts, after: Texts) => review(before, after, { figuresOf: figuresOfCard });

/** Lines taken out, doubled, swapped, cut or put into another file. */
function damaged(chance: Chance, among: readonly string[] = [...samples.keys()]): Texts {
  const texts = new Map(samples);
  for (let n = 1 + chance.below(3); n > 0; n--) {
    const uri = chance.pick(among.filter((one) => texts.has(one)));
    const lines = texts.get(uri)!.split('\n');
    const at = chance.below(lines.length);
    const kind = chance.below(6);
    if (kind === 0) lines.splice(at, 1);
    else if (kind === 1) lines.splice(at, 0, lines[chance.below(lines.length)]!);
    else if (kind === 2) lines[at] = lines[at]!.slice(0, chance.below(lines[at]!.length + 1));
    else if (kind === 3) lines[at] = lines[at]!.replace(/\d/, String(chance.below(10)));
    else if (kind === 4) lines.length = at;
    texts.delete(uri);
    texts.set(kind === 5 ? uri.replace('.dryfit', `-${at}.dryfit`) : uri, lines.join('\n'));
  }
  return texts;
}

describe('a review', () => {
  it('of a version against itself says nothing', () => {
    expect(between(samples, new Map(samples))).toMatchObject({ builds: [], files: [] });
  });

  it('of damage never throws in any form, and the way back undoes it', { timeout: 120_000 }, () => {
    const chance = seeded(seed);
    for (let run = 0; run < 40; run++) {
      const after = damaged(chance);
      const there = between(samples, after);
      const back = between(after, samples);
      const shown = { review: there, base: 'main', head: 'working tree', name: (uri: string) => uri, notes: [] };
      reviewAsText(shown);
      reviewAsMarkdown(shown);
      reviewAsView(shown);
      reviewAsSvg(shown);
      JSON.stringify(reviewAsJson(shown));
      // A file that is new on one side has gone on the other, which mends nothing.
      const both = ({ builds, files }: typeof there): typeof builds | typeof files =>
        [...builds, ...files].filter(({ status }) => status !== 'added' && status !== 'deleted') as typeof builds;
      const names = (list: readonly { check: string; fingerprint: string }[]): string[] =>
        list.map(({ fingerprint }) => fingerprint.replaceAll('.use>', '.')).sort();
      expect(
        names(
          // One that is only graver now is only milder on the way back.
          both(there).flatMap(({ findings }) =>
            findings.introduced.flatMap(({ finding, was }) => (was ? [] : [finding])),
          ),
        ),
        `seed ${seed}, run ${run}`,
      ).toEqual(names(both(back).flatMap(({ findings }) => findings.resolved)));
      expect(there.builds.map(({ from, file }) => from ?? file).sort()).toEqual(
        back.builds.map(({ file }) => file).sort(),
      );
    }
  });
});

describe('what is looked at', () => {
  const isOwn = (name: string): boolean => /^(?:builds|faulty)\//.test(name);
  const others = sampleNames.filter((name) => !isOwn(name)).map(sampleUri);

  /** Findings and figures of every build, nothing passed over. */
  function everything(texts: Texts): ReadonlyMap<string, string> {
    const workspace = new Workspace();
    for (const [uri, text] of texts) workspace.set(uri, text);
    return new Map(
      sampleNames.filter(isOwn).map((name) => {
        const analysis = analyse(workspace, sampleUri(name))!;
        const findings = analysis.findings.map(({ fingerprint, severity }) => `${severity} ${fingerprint}`).sort();
        const figures = analysis.crafts.flatMap((craft) =>
          figuresOfCard(craft, analysis).flatMap((pack) =>
            [...pack.figures.values()].map(({ name, value, low, high }) => `${name} ${value} ${low} ${high}`),
          ),
        );
        return [sampleUri(name), [...findings, ...figures].join('\n')];
      }),
    );
  }

  it('holds every build whose findings or figures change when any other file changes', { timeout: 120_000 }, () => {
    const chance = seeded(seed + 1);
    const before = everything(samples);
    let changed = 0;
    for (let run = 0; run < 60; run++) {
      const after = damaged(chance, others);
      const now = everything(after);
      const reviewed = new Set(between(samples, after).builds.map(({ file }) => file));
      const missed = [...now].filter(([uri, all]) => all !== before.get(uri) && !reviewed.has(uri));
      changed += [...now].filter(([uri, all]) => all !== before.get(uri)).length;
      expect(
        missed.map(([uri]) => uri),
        `seed ${seed}, run ${run}: ${[...after].filter(([uri, text]) => samples.get(uri) !== text).map(([uri]) => uri)}`,
      ).toEqual([]);
    }
    expect(changed).toBeGreaterThan(20);
  });
});

describe('a difference', () => {
  const figure = (value: number, spread: number) => ({
    name: 'time-as-flown',
    title: '',
    value,
    low: value - spread,
    high: value + spread,
  });

  it('is significant when it is more than both ranges leave open', () => {
    expect(isSignificant(figure(100, 3), figure(104.9, 4))).toBe(false);
    expect(isSignificant(figure(100, 3), figure(105.1, 4))).toBe(true);
    expect(isSignificant(figure(105.1, 4), figure(100, 3))).toBe(true);
    expect(isSignificant(figure(100, 0), figure(100.01, 0))).toBe(true);
    expect(isSignificant(figure(100, 0), figure(100, 0))).toBe(false);
  });
});
