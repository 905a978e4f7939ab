/** Consensus: figures equal to a general-purpose statistics library on the samples; with few references it says what it cannot say. */
import { median, quantile } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { analyse, referencesIn } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { consensusOf } from '../../server/src/plan/consensus';
import { standings } from '../../server/src/plan/consensus-craft';
import { practisedClasses } from '../../server/src/plan/consensus-practice';
import { quantile as ours, spreadOf } from '../../server/src/plan/consensus-statistics';
import { consensusAsText, silences, standingLine } from '../../server/src/report/consensus-report';
import { sampleUri, sampleWorkspace } from '../support/samples';
import { seeded } from '../support/seeded';

const references = referencesIn(sampleWorkspace());

describe.each(['freestyle-5', 'whoop-75'])('%s in the samples', (name) => {
  const consensus = consensusOf(name, references);

  it('rests on five references with where they come from', () => {
    expect(consensus.references).toHaveLength(5);
    for (const craft of consensus.references) {
      expect(craft.said.source?.value).toBeTruthy();
      expect(craft.said.seen?.value).toMatch(/^2026-/);
    }
  });

  it('has the library statistics of each number', () => {
    let compared = 0;
    for (const one of consensus.envelopes) {
      if (one.is !== 'number') continue;
      const values = consensus.references.flatMap((craft) => {
        const read = one.of.read(craft);
        const cells = craft.packs[0]?.facts.cells?.value.series;
        return read && (one.cells === undefined || cells === one.cells) ? [read.value] : [];
      });
      expect(one.spread.count).toBe(values.length);
      expect([one.spread.least, one.spread.most]).toEqual([Math.min(...values), Math.max(...values)]);
      expect(one.spread.median).toBe(values.length < 3 ? undefined : median(values));
      expect(one.spread.middle).toEqual(
        values.length < 4 ? undefined : [quantile(values, 0.25), quantile(values, 0.75)],
      );
      compared++;
    }
    expect(compared).toBeGreaterThan(6);
  });
});

it('has the library quantiles of drawn numbers', () => {
  const chance = seeded(5);
  for (let n = 1; n < 60; n++) {
    const values = Array.from({ length: n }, () => chance.below(2000)).sort((a, b) => a - b);
    for (const share of [0, 0.25, 0.5, 0.75, 1]) {
      expect(ours(values, share)).toBeCloseTo(quantile(values, share), 9);
    }
  }
});

it('never compares motor speed across cell counts', () => {
  const kv = consensusOf('whoop-75', references).envelopes.filter((one) => one.of.field === 'parts.motors.kv');
  expect(kv.map((one) => one.is === 'number' && [one.cells, one.spread.count])).toEqual([
    [1, 4],
    [2, 1],
  ]);
});

it('says what one, two and three cannot say', () => {
  const all = references.filter((craft) => craft.said.craft?.value === 'freestyle-5');
  for (const count of [0, 1, 2, 3]) {
    const consensus = consensusOf('freestyle-5', all.slice(0, count));
    const text = consensusAsText(consensus);
    expect(text).toContain(silences(count)[0]);
    expect(/Common practice, not read/.test(text)).toBe(count < 3);
    for (const one of consensus.envelopes)
      if (one.is === 'number') {
        expect(one.spread.median === undefined).toBe(one.spread.count < 3);
        expect(one.spread.middle).toBeUndefined();
      }
  }
  expect(spreadOf([])).toBeUndefined();
});

it('ships common practice for every class, five-inch freestyle as the trade has it', () => {
  expect(practisedClasses).toHaveLength(10);
  const text = consensusAsText(consensusOf('freestyle-5', []));
  expect(text).toMatch(/2207 or 2306/);
  expect(text).toMatch(/1750 to 1850 Kv on 6S/);
  expect(text).toMatch(/45 to 60 A, F7-class/);
  expect(text).toMatch(/6S 1100 to 1300 mAh/);
});

it('tells where a value lies, and finds one that nobody has', () => {
  const workspace = sampleWorkspace();
  const craft = analyse(workspace, sampleUri('builds/ossel-5.dryfit.yaml'), { checks: [] })!.crafts[0]!;
  const lines = standings(craft).map(standingLine);
  expect(lines).toContain('5 references on 6S: 1750 to 1850 Kv, median 1800 Kv; 1800 Kv is inside.');
  const odd = new Workspace();
  for (const uri of workspace.uris()) odd.set(uri, workspace.get(uri)!.text);
  odd.set(
    sampleUri('builds/odd.dryfit.yaml'),
    'dryfit: build\nname: Odd\ncraft: freestyle-5\nparts:\n  motors:\n    kv: 1300\npacks:\n  main:\n    cells: 6S\n',
  );
  const found = analyse(odd, sampleUri('builds/odd.dryfit.yaml'))!.findings.filter(
    (one) => one.check === 'outside-references',
  );
  expect(found.map((one) => one.message)).toEqual([
    'Motor speed 1300 Kv is what none of 5 references on 6S has; they lie from 1750 to 1850. Look at it again, and keep it when it is meant.',
  ]);
});
