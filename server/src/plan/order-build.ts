/** The order of one build or of several together: their needs, the shops, and the problem to solve. Finds nothing out by solving. */
import type { Craft } from '../build/craft';
import { type OrderOffer, type OrderProblem, type Purchase, packsFor } from './order-model';
import { type OrderNeed, orderNeeds, unnamedParts } from './order-needs';
import { type OpenShop, openShops, type ShopOffer, type Shops } from './order-shops';

export interface BuildOrder {
  readonly currency: string;
  readonly problem: OrderProblem;
  readonly shops: Shops;
  /** Behind each line of the problem: who needs it. */
  readonly lines: readonly OrderedLine[];
  /** Behind each offer of the problem: where it is written. */
  readonly offers: readonly { readonly shop: OpenShop; readonly offer: ShopOffer }[];
  /** Needs that no shops file has, and parts without an id. */
  readonly unoffered: readonly { readonly craft: number; readonly need: OrderNeed }[];
  readonly unnamed: readonly { readonly craft: number; readonly role: string }[];
  readonly needs: readonly (readonly OrderNeed[])[];
}

export interface OrderedLine {
  readonly part: string;
  readonly wanted: readonly { readonly craft: number; readonly need: OrderNeed }[];
}

export interface OrderWishes {
  readonly shopsAtMost?: number;
  /** Shops that must not be used, by id. */
  readonly without?: readonly string[];
  /** Lines with `from` stay at that shop. */
  readonly keepFrom?: boolean;
  readonly currency?: string;
}

export function orderOf(crafts: readonly Craft[], wishes: OrderWishes = {}): BuildOrder {
  const files = crafts[0]?.shops ?? [];
  const budget = crafts.find((craft) => craft.said.budget)?.said.budget;
  const shops = openShops(files, wishes.currency ?? budget?.value.currency);
  const needs = crafts.map(orderNeeds);
  const known = shops.offersOf;
  const lines = new Map<string, { craft: number; need: OrderNeed }[]>();
  const unoffered: { craft: number; need: OrderNeed }[] = [];
  for (const [craft, list] of needs.entries())
    for (const need of list) {
      if (need.need === 0) continue;
      if (!known.has(need.part)) unoffered.push({ craft, need });
      else lines.set(need.part, [...(lines.get(need.part) ?? []), { craft, need }]);
    }
  const ordered = [...lines].map(([part, wanted]) => ({ part, wanted }));
  const offers: { line: number; shop: number; behind: { shop: OpenShop; offer: ShopOffer } }[] = [];
  for (const [line, { part, wanted }] of ordered.entries()) {
    const pinned = wishes.keepFrom && wanted.find(({ need }) => need.from)?.need.from;
    for (const behind of shops.offersOf.get(part) ?? []) {
      const { id } = behind.shop.shop;
      if (wishes.without?.includes(id) || (pinned && pinned.value !== id)) continue;
      offers.push({ line, shop: shops.open.indexOf(behind.shop), behind });
    }
  }
  const problem = {
    lines: ordered.map(({ part, wanted }, index) => {
      const need = wanted.reduce((sum, one) => sum + one.need.need, 0);
      return {
        part,
        need,
        // Two builds may have weighed the same part differently.
        mass: Math.round((wanted.reduce((sum, one) => sum + one.need.need * one.need.mass, 0) / need) * 1e4),
        battery: wanted[0]!.need.kind === 'battery',
        whole: oneShopHas(need, index),
      };
    }),
    shops: shops.open.map(({ shop }) => shop),
    offers: offers.map(
      ({ line, shop, behind: { offer } }): OrderOffer => ({
        line,
        shop,
        pack: offer.pack,
        price: offer.price,
        stock: offer.stock,
      }),
    ),
    ...(wishes.shopsAtMost === undefined ? {} : { shopsAtMost: wishes.shopsAtMost }),
  };

  /** Pieces of one kind come from one shop, unless none has enough of them. */
  function oneShopHas(need: number, line: number): boolean {
    const pieces = new Map<number, number>();
    for (const one of offers)
      if (one.line === line)
        pieces.set(
          one.shop,
          (pieces.get(one.shop) ?? 0) + one.behind.offer.pack * (one.behind.offer.stock ?? Number.POSITIVE_INFINITY),
        );
    return [...pieces.values()].some((count) => count >= need);
  }

  return {
    currency: shops.currency,
    problem,
    shops,
    lines: ordered,
    offers: offers.map(({ behind }) => behind),
    unoffered,
    unnamed: crafts.flatMap((craft, index) => unnamedParts(craft).map((role) => ({ craft: index, role }))),
    needs,
  };
}

/** The order as the builds say it: each line at the shop that its `from` names, in the cheapest packs. Nothing when a line names none. */
export function saidOrder(order: BuildOrder): readonly Purchase[] | undefined {
  const purchases: Purchase[] = [];
  for (const [line, { wanted }] of order.lines.entries()) {
    const from = wanted.find(({ need }) => need.from)?.need.from?.value;
    const shop = order.shops.open.findIndex((one) => one.shop.id === from);
    const cover = shop < 0 ? undefined : cheapestAt(order.problem, line, shop);
    if (!cover) return undefined;
    purchases.push(...cover);
  }
  return purchases;
}

/** The packs of one size that cost least for a line, at one shop or anywhere; stock and shipping not looked at. */
export function cheapestAt(problem: OrderProblem, line: number, shop?: number): readonly Purchase[] | undefined {
  const { need } = problem.lines[line]!;
  const best = problem.offers
    .map((offer, index) => ({ offer: index, packs: packsFor(need, offer), own: offer }))
    .filter(({ own }) => own.line === line && (shop === undefined || own.shop === shop))
    .sort((a, b) => a.packs * a.own.price - b.packs * b.own.price)[0];
  return best && [{ offer: best.offer, packs: best.packs }];
}
