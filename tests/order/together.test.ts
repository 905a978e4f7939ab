/** Several builds ordered together: shipping is shared, nobody's cent is lost, and where nothing can be shared nothing is saved. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { craftsOf } from '../../server/src/analysis';
import type { Craft } from '../../server/src/build/craft';
import { Workspace } from '../../server/src/library/workspace';
import type { Solver } from '../../server/src/plan/order-solve';
import { orderAsMarkdown, orderAsText } from '../../server/src/report/order-forms';
import { type OrderReport, orderReport, split } from '../../server/src/report/order-report';
import { loadSolver } from '../../server/src/solver/load';
import { sampleNames, sampleUri, sampleWorkspace } from '../support/samples';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

async function ordered(crafts: readonly Craft[]): Promise<OrderReport> {
  const outcome = await orderReport(crafts, solver);
  if (!outcome.ok) throw new Error(outcome.why);
  return outcome.report;
}
const total = async (craft: Craft): Promise<number> => (await ordered([craft])).order.priced.total;
const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);

const club = (shops: string, builds: readonly string[]): readonly Craft[] => {
  const workspace = new Workspace();
  workspace.set('file:///club/shops.dryfit.yaml', `dryfit: shops\nshops:\n${shops}`);
  return builds.flatMap((parts, i) => {
    const uri = `file:///club/${i}.dryfit.yaml`;
    workspace.set(uri, `dryfit: build\nname: Friend ${i + 1}\nparts:\n${parts}`);
    return craftsOf(workspace, workspace.get(uri)!);
  });
};
const frame = (id: string): string => `  frame:\n    sold-as: ${id}\n`;

describe('the club of the samples', () => {
  const workspace = sampleWorkspace();
  const names = sampleNames.filter((name) => name.startsWith('together/'));
  const crafts = names.flatMap((name) => craftsOf(workspace, workspace.get(sampleUri(name))!));

  it('pays less together than each alone, and the shares add up to the cent', { timeout: 30_000 }, async () => {
    const report = await ordered(crafts);
    const alone = [];
    for (const craft of crafts) alone.push(await total(craft));
    expect(report.crafts).toEqual(['Pip of Bo', 'Pip of Cai', 'Sliver of Dee']);
    expect(report.shares.map((share) => share.alone)).toEqual(alone);
    expect(report.order.priced.total).toBeLessThan(sum(alone));
    expect(sum(report.shares.map((share) => share.total))).toBe(report.order.priced.total);
    expect(sum(report.shares.map((share) => share.goods))).toBe(report.order.priced.goods);
    for (const share of report.shares) expect(share.total).toBeLessThan(share.alone!);
    // One parcel of each shop, where alone there would be six.
    expect(report.parcels).toHaveLength(2);
    const words = `Together 29.00 less than 715.40 for each alone.`;
    expect(orderAsText(report)).toContain(words);
    expect(orderAsMarkdown(report)).toContain(words);
  });
});

describe('small clubs, worked out by hand', () => {
  it('share one parcel: 7 once instead of twice', async () => {
    const crafts = club(
      '  pellam:\n    currency: EUR\n    flat: 7\n    offers:\n      a: [{ price: 10 }]\n      b: [{ price: 30 }]\n',
      [frame('a'), frame('b')],
    );
    const report = await ordered(crafts);
    expect(report.order.priced.total).toBe(4700);
    // 7.00 by the value of the goods: 1.75 and 5.25.
    expect(report.shares).toEqual([
      { name: 'Friend 1', goods: 1000, rest: 175, total: 1175, alone: 1700 },
      { name: 'Friend 2', goods: 3000, rest: 525, total: 3525, alone: 3700 },
    ]);
  });

  it('pay the sum where nothing is shared', async () => {
    const crafts = club(
      '  pellam:\n    currency: EUR\n    flat: 7\n    offers:\n      a: [{ price: 10 }]\n  tarn:\n    currency: EUR\n    flat: 5\n    offers:\n      b: [{ price: 30 }]\n',
      [frame('a'), frame('b')],
    );
    const report = await ordered(crafts);
    expect(report.order.priced.total).toBe((await total(crafts[0]!)) + (await total(crafts[1]!)));
    expect(orderAsText(report)).toContain('Together nothing is saved over each alone.');
  });

  it('share a pack that each alone would buy whole', async () => {
    const crafts = club('  pellam:\n    currency: EUR\n    offers:\n      a: [{ pack: 2, price: 9.01 }]\n', [
      frame('a'),
      frame('a'),
    ]);
    const report = await ordered(crafts);
    // An odd cent goes to one of them, not to nobody.
    expect(report.shares.map((share) => share.total)).toEqual([451, 450]);
    expect(report.order.priced.total).toBe(901);
  });

  it('are not compared with orders alone when something is sold out to them together', async () => {
    const crafts = club(
      '  pellam:\n    currency: EUR\n    flat: 7\n    offers:\n      a: [{ price: 10, stock: 1 }]\n      b: [{ price: 9 }]\n',
      [`${frame('a')}  strap:\n    sold-as: b\n`, `${frame('a')}  strap:\n    sold-as: b\n`],
    );
    const report = await ordered(crafts);
    expect(report.missing.map(({ part, why }) => [part, why])).toEqual([['a', 'sold out']]);
    expect(report.shares.map((share) => share.alone)).toEqual([undefined, undefined]);
  });
});

it('splits any amount to the cent, nobody more than a cent from the exact share', () => {
  fc.assert(
    fc.property(fc.nat(1_000_000), fc.array(fc.nat(100_000), { minLength: 1, maxLength: 8 }), (cents, weights) => {
      const parts = split(cents, weights);
      expect(sum(parts)).toBe(cents);
      const all = sum(weights);
      if (all > 0)
        for (const [i, part] of parts.entries())
          expect(Math.abs(part - (cents * weights[i]!) / all)).toBeLessThanOrEqual(1);
    }),
  );
});
