/** Every way to place an order, tried one by one, with prices worked out the long way round. Shares nothing with the engine but the form of the problem. */
import type { OrderProblem } from '../../server/src/plan/order-model';

type Buy = readonly (readonly [offer: number, packs: number])[];

/** Ways to buy each line: enough pieces, no pack that could be left out, one shop for a whole line. */
export function waysToBuy(problem: OrderProblem): readonly (readonly Buy[])[] {
  return problem.lines.map((line, index) => {
    const offers = problem.offers.map((offer, i) => ({ offer, i })).filter(({ offer }) => offer.line === index);
    const ways: Buy[] = [];
    const counts = offers.map(() => 0);
    const walk = (at: number): void => {
      if (at === offers.length) {
        const buy = offers.flatMap(({ i }, n) => (counts[n]! > 0 ? [[i, counts[n]!] as const] : []));
        const pieces = buy.reduce((sum, [i, n]) => sum + n * problem.offers[i]!.pack, 0);
        const tooMuch = buy.some(([i]) => pieces - problem.offers[i]!.pack >= line.need);
        const shops = new Set(buy.map(([i]) => problem.offers[i]!.shop));
        if (pieces >= line.need && !tooMuch && (!line.whole || shops.size === 1)) ways.push(buy);
        return;
      }
      const { offer } = offers[at]!;
      for (let n = 0; n <= Math.min(offer.stock ?? 99, Math.ceil(line.need / offer.pack)); n++) {
        counts[at] = n;
        walk(at + 1);
      }
      counts[at] = 0;
    };
    walk(0);
    return ways;
  });
}

export const sizeOf = (ways: readonly (readonly Buy[])[]): number => ways.reduce((size, one) => size * one.length, 1);

/** The least total in cents; nothing when no way is allowed. */
export function cheapestOfAll(problem: OrderProblem, ways = waysToBuy(problem)): number | undefined {
  let best: number | undefined;
  const n = problem.shops.length;
  // Per shop: goods, then mass, pieces and lines of what is no battery, then of batteries.
  const start = Array.from({ length: n }, () => [0, 0, 0, 0, 0, 0, 0]);
  const walk = (at: number, state: number[][]): void => {
    if (at === ways.length) {
      const total = totalOf(problem, state);
      if (total !== undefined && (best === undefined || total < best)) best = total;
      return;
    }
    const battery = problem.lines[at]!.battery ? 3 : 0;
    for (const buy of ways[at]!) {
      const next = state.map((one) => [...one]);
      for (const shop of new Set(buy.map(([i]) => problem.offers[i]!.shop))) next[shop]![3 + battery]! += 1;
      for (const [i, packs] of buy) {
        const offer = problem.offers[i]!;
        const own = next[offer.shop]!;
        own[0]! += packs * offer.price;
        own[1 + battery]! += packs * offer.pack * problem.lines[at]!.mass;
        own[2 + battery]! += packs * offer.pack;
      }
      walk(at + 1, next);
    }
  };
  walk(0, start);
  return best;
}

function totalOf(problem: OrderProblem, state: readonly (readonly number[])[]): number | undefined {
  let total = 0;
  let used = 0;
  for (const [i, shop] of problem.shops.entries()) {
    const [goods, massA, piecesA, linesA, massB, piecesB, linesB] = state[i] as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    if (linesA + linesB === 0) continue;
    used++;
    if (goods < shop.minimum) return undefined;
    if (linesB > 0 && !shop.sendsBatteries) return undefined;
    const parcels = shop.batteriesApart
      ? [
          [massA, piecesA, linesA],
          [massB, piecesB, linesB],
        ].filter(([, , lines]) => lines! > 0)
      : [[massA + massB, piecesA + piecesB, linesA + linesB]];
    let shipping = 0;
    for (const [mass, pieces, lines] of parcels) {
      let fee = shop.flat + pieces! * shop.perPiece + lines! * shop.perLine;
      if (shop.tiers.length > 0) {
        const tier = shop.tiers.find((one) => one.upTo === undefined || one.upTo >= mass!);
        if (!tier) return undefined;
        fee += tier.cost;
      }
      if (!(shop.freeOver !== undefined && goods >= shop.freeOver)) shipping += fee;
    }
    if (linesB > 0) shipping += shop.batterySurcharge;
    const { border } = shop;
    const half = (value: bigint): number => Number((value + 5000n) / 10000n);
    const duty = half(BigInt(goods) * BigInt(border.duty));
    const tax = half(BigInt(goods + shipping + duty) * BigInt(border.tax));
    total += goods + shipping + duty + tax + parcels.length * border.handling + (linesA + linesB) * border.perLine;
  }
  return problem.shopsAtMost !== undefined && used > problem.shopsAtMost ? undefined : total;
}
