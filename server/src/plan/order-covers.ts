/** The ways in which one line can be bought: packs that cover the need, none of which could be left out. Knows no shop's rules. */
import type { OrderOffer, OrderProblem, Purchase } from './order-model';

/** All ways to cover a need with these offers. `most` bounds their number; beyond it the rest is left out, which a line of so few pieces never meets. */
export function coversOf(
  offers: readonly { readonly index: number; readonly offer: OrderOffer }[],
  need: number,
  most = 400,
): readonly (readonly Purchase[])[] {
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
    if (!next || found.length >= most) return;
    const limit = Math.min(next.offer.stock ?? Number.POSITIVE_INFINITY, Math.ceil(left / next.offer.pack));
    for (let packs = limit; packs >= 0; packs--)
      walk(at + 1, left - packs * next.offer.pack, packs > 0 ? [...taken, { offer: next.index, packs }] : taken);
  };
  const packOf = (one: Purchase): number => offers.find(({ index }) => index === one.offer)!.offer.pack;
  walk(0, need, []);
  return found;
}

export const offersFor = (
  problem: OrderProblem,
  line: number,
  shop?: number,
): readonly { index: number; offer: OrderOffer }[] =>
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
    .flatMap((one) => coversOf(offersFor(problem, line, one), need))
    .reduce<readonly Purchase[] | undefined>(
      (best, cover) => (!best || costOf(problem, cover) < costOf(problem, best) ? cover : best),
      undefined,
    );
}
