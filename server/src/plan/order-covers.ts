/** The ways in which one line can be bought: packs that cover the need, none of which could be left out. Knows no shop's rules. */
import { type OrderOffer, type OrderProblem, type Purchase, packsFor } from './order-model';

type Offers = readonly { readonly index: number; readonly offer: OrderOffer }[];

/** All ways to cover a need with these offers; nothing when there are more than `most`, as a list with some left out would prove nothing. */
export function coversOf(offers: Offers, need: number, most = 400): readonly (readonly Purchase[])[] | undefined {
  // Large packs first, so that a pack that could be left out is seen early.
  const sorted = [...offers].sort((a, b) => b.offer.pack - a.offer.pack || a.index - b.index);
  const found: Purchase[][] = [];
  const walk = (at: number, left: number, taken: readonly Purchase[]): void => {
    if (left <= 0) {
      const spare = -left;
      const smallest = Math.min(...taken.map((one) => packOf(one)));
      if (spare < smallest) found.push([...taken]);
      return;
    }
    const next = sorted[at];
    if (!next || found.length > most) return;
    const limit = Math.min(next.offer.stock ?? Number.POSITIVE_INFINITY, packsFor(left, next.offer));
    for (let packs = limit; packs >= 0; packs--)
      walk(at + 1, left - packs * next.offer.pack, packs > 0 ? [...taken, { offer: next.index, packs }] : taken);
  };
  const packOf = (one: Purchase): number => offers.find(({ index }) => index === one.offer)!.offer.pack;
  walk(0, need, []);
  return found.length > most ? undefined : found;
}

export const offersFor = (problem: OrderProblem, line: number, shop?: number): Offers =>
  problem.offers.flatMap((offer, index) =>
    offer.line === line && (shop === undefined || offer.shop === shop) && offer.stock !== 0 ? [{ index, offer }] : [],
  );

/** Cents of the goods of one way to buy. */
export const costOf = (problem: OrderProblem, cover: readonly Purchase[]): number =>
  cover.reduce((sum, { offer, packs }) => sum + problem.offers[offer]!.price * packs, 0);

/** The cheapest goods for a line, at one shop or anywhere; shipping left out. */
export function cheapestCover(problem: OrderProblem, line: number, shop?: number): readonly Purchase[] | undefined {
  const { need, whole } = problem.lines[line]!;
  const shops = shop === undefined && whole ? problem.shops.map((_, i) => i) : [shop];
  return shops
    .flatMap((one) => cheapestOf(offersFor(problem, line, one), need) ?? [])
    .reduce<Cover | undefined>((best, cover) => (!best || cover.cost < best.cost ? cover : best), undefined)?.purchases;
}

interface Cover {
  readonly cost: number;
  readonly purchases: readonly Purchase[];
}

/** By the pieces covered so far, one offer after the other, so that many sizes of packs need no search. */
function cheapestOf(offers: Offers, need: number): Cover | undefined {
  let best: (Cover | undefined)[] = Array.from({ length: need + 1 });
  best[0] = { cost: 0, purchases: [] };
  for (const { index, offer } of offers) {
    const next = [...best];
    for (const [covered, known] of best.entries()) {
      if (!known) continue;
      const most = Math.min(offer.stock ?? Number.POSITIVE_INFINITY, packsFor(need - covered, offer));
      for (let packs = 1; packs <= most; packs++) {
        const then = Math.min(need, covered + packs * offer.pack);
        const cost = known.cost + packs * offer.price;
        if (cost < (next[then]?.cost ?? Number.POSITIVE_INFINITY))
          next[then] = { cost, purchases: [...known.purchases, { offer: index, packs }] };
      }
    }
    best = next;
  }
  return best[need];
}
