/** The proved order against exhaustive search: 300 drawn instances with every kind of rule, and orders whose answer was worked out by hand. */
import { beforeAll, describe, expect, it } from 'vitest';
import { cheapestCover, costOf, coversOf, offersFor } from '../../server/src/plan/order-covers';
import type { OrderProblem, OrderShop } from '../../server/src/plan/order-model';
import { priceOrder } from '../../server/src/plan/order-price';
import { cheapestEverywhere, type Solver, singleShop, solveOrder } from '../../server/src/plan/order-solve';
import { loadSolver } from '../../server/src/solver/load';
import { cheapestOfAll, sizeOf, waysToBuy } from './exhaustive';
import { drawnOrder, noBorder } from './instances';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

describe('300 drawn orders', () => {
  const instances: { seed: number; problem: OrderProblem; ways: ReturnType<typeof waysToBuy> }[] = [];
  for (let seed = 1; instances.length < 300; seed++) {
    const problem = drawnOrder(seed, { lines: 1 + (seed % 8), shops: 1 + ((seed >> 3) % 4) });
    const ways = waysToBuy(problem);
    // What can be tried one by one in the ordinary run.
    if (sizeOf(ways) <= 120_000) instances.push({ seed, problem, ways });
  }

  it('hold every kind of rule', () => {
    const shops = instances.flatMap(({ problem }) => problem.shops);
    const rules: Record<string, number> = {
      flat: shops.filter((shop) => shop.flat > 0).length,
      tiers: shops.filter((shop) => shop.tiers.length > 0).length,
      perPiece: shops.filter((shop) => shop.perPiece > 0).length,
      perLine: shops.filter((shop) => shop.perLine > 0).length,
      freeOver: shops.filter((shop) => shop.freeOver !== undefined).length,
      minimum: shops.filter((shop) => shop.minimum > 0).length,
      noBatteries: shops.filter((shop) => !shop.sendsBatteries).length,
      apart: shops.filter((shop) => shop.batteriesApart).length,
      surcharge: shops.filter((shop) => shop.batterySurcharge > 0).length,
      duty: shops.filter((shop) => shop.border.duty > 0).length,
      tax: shops.filter((shop) => shop.border.tax > 0).length,
      handling: shops.filter((shop) => shop.border.handling > 0).length,
      shopsAtMost: instances.filter(({ problem }) => problem.shopsAtMost !== undefined).length,
      split: instances.filter(({ problem }) => problem.lines.some((line) => !line.whole)).length,
      packs: instances.filter(({ problem }) => problem.offers.some((offer) => offer.pack > 1)).length,
      stock: instances.filter(({ problem }) => problem.offers.some((offer) => offer.stock !== undefined)).length,
      full: instances.filter(({ problem }) => problem.lines.length >= 7 && problem.shops.length >= 3).length,
    };
    for (const [rule, count] of Object.entries(rules)) expect(count, rule).toBeGreaterThan(10);
  });

  it('cost the same as the best of all ways, with gap 0', { timeout: 60_000 }, async () => {
    let found = 0;
    let beaten = 0;
    for (const { seed, problem, ways } of instances) {
      const best = cheapestOfAll(problem, ways);
      const answer = await solveOrder(problem, solver);
      if (best === undefined) {
        expect(answer, `seed ${seed}`).toEqual({ ok: false, why: 'infeasible' });
        continue;
      }
      found++;
      expect(answer.ok ? answer.order.priced.total : answer.why, `seed ${seed}`).toBe(best);
      if (!answer.ok) continue;
      expect(answer.order, `seed ${seed}`).toMatchObject({ optimal: true, bound: best });
      const again = priceOrder(problem, answer.order.priced.purchases);
      expect(again.ok && again.priced.total).toBe(best);
      for (const other of [cheapestEverywhere(problem), singleShop(problem)?.priced])
        if (other && (problem.shopsAtMost ?? 99) >= other.shops.length) {
          expect(other.total, `seed ${seed}`).toBeGreaterThanOrEqual(best);
          if (other.total > best) beaten++;
        }
    }
    expect(found).toBeGreaterThan(150);
    expect(beaten).toBeGreaterThan(50);
  });
});

describe('a line of many pieces in packs of many sizes', () => {
  /** Washers by the dozen: more ways than are listed one by one. */
  const packs = [
    [1, 14],
    [2, 26],
    [5, 60],
    [10, 116, 3],
    [20, 222, 2],
  ] as const;
  const atBoth = packs.flatMap(([pack, price, stock]) => [
    { line: 0, shop: 0, pack, price, stock },
    { line: 0, shop: 1, pack, price: price + 7, stock },
  ]);
  const many = (whole: boolean): OrderProblem => ({
    lines: [{ part: 'washer', need: 60, mass: 2, battery: false, whole }],
    shops: [shop('a', { flat: 300, minimum: 600 }), shop('b', { flat: 100, freeOver: 1200 })],
    offers: atBoth,
  });
  /** One shop at a time, as the line may not be divided. */
  const alone = [0, 1].map((at) => ({ ...many(true), offers: atBoth.filter((offer) => offer.shop === at) }));

  it('has more ways than are listed', () => {
    expect(coversOf(offersFor(many(true), 0, 0), 60)).toBeUndefined();
  });

  it.each([true, false])('is solved to proof all the same, whole: %s', async (whole) => {
    const answer = await solveOrder(many(whole), solver);
    const best = Math.min(...alone.map((problem) => cheapestOfAll(problem)!));
    expect(answer.ok && answer.order.optimal).toBe(true);
    // What may be split is never dearer than what may not.
    if (whole) expect(answer.ok && answer.order.priced.total).toBe(best);
    else expect(answer.ok && answer.order.priced.total).toBeLessThanOrEqual(best);
  });

  it('has its cheapest goods found without a list', () => {
    const problem = many(true);
    const goods = alone.flatMap((one) =>
      waysToBuy(one)[0]!.map((buy) => buy.reduce((sum, [i, n]) => sum + one.offers[i]!.price * n, 0)),
    );
    const cover = cheapestCover(problem, 0)!;
    expect(costOf(problem, cover)).toBe(Math.min(...goods));
  });
});

const shop = (id: string, rules: Partial<OrderShop>): OrderShop => ({
  id,
  flat: 0,
  tiers: [],
  perPiece: 0,
  perLine: 0,
  freeOver: undefined,
  minimum: 0,
  sendsBatteries: true,
  batteriesApart: false,
  batterySurcharge: 0,
  border: noBorder,
  ...rules,
});

/** Rows: need, grams each, price at each shop in whole money; a dash where it has none. */
function table(
  shops: readonly OrderShop[],
  rows: readonly (readonly [string, number, number, ...(number | null)[]])[],
): OrderProblem {
  return {
    shops,
    lines: rows.map(([part, need, grams]) => ({ part, need, mass: grams * 10, battery: false, whole: true })),
    offers: rows.flatMap(([, , , ...prices], line) =>
      prices.flatMap((price, at) =>
        price === null ? [] : [{ line, shop: at, pack: 1, price: Math.round(price * 100), stock: undefined }],
      ),
    ),
  };
}

describe('an order of eleven lines at four shops, worked out by full enumeration', () => {
  const problem = table(
    [
      shop('n', { flat: 690, freeOver: 25000 }),
      shop('s', {
        tiers: [
          { upTo: 5000, cost: 690 },
          { upTo: 20000, cost: 990 },
          { upTo: undefined, cost: 1200 },
        ],
      }),
      shop('e', { flat: 3400, perLine: 250 }),
      shop('w', { flat: 1190, minimum: 4000 }),
    ],
    [
      ['frame kit', 1, 120, 54.9, 49, null, 58],
      ['motor', 5, 33, 21.9, 18.5, 17.2, null],
      ['propeller set', 6, 20, 3.6, 3.2, 2.4, 3.9],
      ['camera', 1, 10, 29.9, null, 24.5, 27],
      ['video transmitter', 1, 12, 39.9, 36, 33, null],
      ['video antenna', 2, 8, 12.9, 11.5, null, 9.9],
      ['radio receiver', 1, 3, 17.9, 18.9, 13.5, 16.5],
      ['4-in-1 ESC', 1, 16, 69, null, 58, null],
      ['flight controller', 1, 9, 49, 52, 43, null],
      ['battery', 2, 210, 32, null, null, 30.5],
      ['capacitor, strap, wire', 1, 90, 11, 9, null, 12.5],
    ],
  );

  it('costs 467.80 from two shops: a threshold reached and a weight kept', async () => {
    const answer = await solveOrder(problem, solver);
    expect(answer.ok && answer.order).toMatchObject({ optimal: true, bound: 46780 });
    if (!answer.ok) return;
    const { priced } = answer.order;
    expect(priced.total).toBe(46780);
    expect(priced.shops).toMatchObject([
      { shop: 0, goods: 25140, shipping: 0, free: true },
      { shop: 1, goods: 20950, shipping: 690 },
    ]);
    expect(priced.parcels).toMatchObject([{}, { mass: 4030 }]);
  });

  it('costs 481.50 with each part where it is cheapest, 492.50 all from one shop', () => {
    expect(cheapestEverywhere(problem)?.total).toBe(48150);
    expect(singleShop(problem)).toMatchObject({ shop: 0, priced: { total: 49250 } });
  });

  it('costs 492.50 when one shop is all that is wanted', async () => {
    const answer = await solveOrder({ ...problem, shopsAtMost: 1 }, solver);
    expect(answer.ok && answer.order.priced.total).toBe(49250);
  });
});

it('buys both from one shop where the cheapest of each would cost a second parcel', async () => {
  const problem = table(
    [shop('x', { flat: 500 }), shop('y', { flat: 500 })],
    [
      ['a', 1, 10, 10, 9],
      ['b', 1, 10, 10, 12],
    ],
  );
  const answer = await solveOrder(problem, solver);
  expect(answer.ok && answer.order.priced.total).toBe(2500);
  expect(cheapestEverywhere(problem)?.total).toBe(2900);
});
