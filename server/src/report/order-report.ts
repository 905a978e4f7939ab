/** An order with everything a buyer wants to know of it: what goes into which parcel, what it saves, who of several friends pays what. Solves by the solver it is given. */
import type { Craft } from '../build/craft';
import { type BuildOrder, type OrderWishes, orderOf, saidOrder } from '../plan/order-build';
import type { OrderProblem } from '../plan/order-model';
import { type Priced, priceOrder } from '../plan/order-price';
import { cheapestEverywhere, type Order, type Solver, singleShop, solveOrder, unsupplied } from '../plan/order-solve';

export interface OrderReport {
  readonly crafts: readonly string[];
  readonly currency: string;
  readonly order: Order;
  readonly lines: readonly ReportLine[];
  readonly parcels: readonly ReportParcel[];
  /** Cents; nothing when a shop would not send it so. */
  readonly everywhere: number | undefined;
  readonly single: { readonly shop: string; readonly total: number } | undefined;
  /** As the builds say it with `from`. */
  readonly said: number | undefined;
  /** With one shop fewer. */
  readonly fewer: { readonly shops: number; readonly total: number } | undefined;
  readonly shares: readonly {
    readonly name: string;
    readonly goods: number;
    readonly rest: number;
    readonly total: number;
    /** What the same parts would cost ordered alone; nothing when no such order could be solved. */
    readonly alone: number | undefined;
  }[];
  /** Cents and whether the order keeps it; of one build alone. */
  readonly budget: { readonly cents: number; readonly kept: boolean } | undefined;
  /** Not in the order: offered nowhere, sold out everywhere, or without an id. */
  readonly missing: readonly {
    readonly part: string;
    readonly craft: string;
    readonly why: 'nowhere' | 'sold out' | 'no id';
  }[];
  readonly remarks: readonly string[];
}

export interface ReportLine {
  readonly part: string;
  readonly shop: string;
  readonly packs: number;
  readonly pieces: number;
  readonly cost: number;
  /** Pieces in one pack. */
  readonly pack: number;
  /** More pieces than were asked for. */
  readonly left: number;
  readonly parcel: number;
}

export interface ReportParcel {
  readonly shop: string;
  readonly goods: number;
  readonly shipping: number;
  /** g */
  readonly mass: number;
  readonly batteries: boolean;
  readonly free: boolean;
  /** Cents of duty, tax and handling of the whole shop; at its first parcel. */
  readonly taxes: number;
  readonly days: number | undefined;
}

export type OrderOutcome =
  | { readonly ok: true; readonly report: OrderReport }
  | { readonly ok: false; readonly why: 'no-shops' | 'infeasible' | 'unsolved' };

/** Why there is no order, with the way out. */
export const whyNoOrder = {
  'no-shops': 'This workspace has no shops file with prices to compare. Write one: its first line is `dryfit: shops`.',
  infeasible:
    'No order keeps all rules: minimum orders, weights, shops that send no packs, or the number of shops asked for. Allow one shop more, or add offers.',
  unsolved: 'The order could not be solved in the time given. Allow more with `dryfit order --seconds 60`.',
} as const;

export interface OrderAsked extends OrderWishes {
  /** A shop that wins where it costs no more. */
  readonly prefer?: string;
  readonly seconds?: number;
}

export async function orderReport(
  crafts: readonly Craft[],
  solver: Solver,
  asked: OrderAsked = {},
): Promise<OrderOutcome> {
  const whole = orderOf(crafts, asked);
  if (whole.shops.open.length === 0) return { ok: false, why: 'no-shops' };
  const soldOut = unsupplied(whole.problem);
  const order = withoutLines(whole, soldOut);
  const answer = await solveOrder(order.problem, solver, asked.seconds);
  if (!answer.ok) return { ok: false, why: answer.why };
  const best = await preferring(order.problem, answer.order, asked.prefer, solver);
  const { priced } = best;
  const used = priced.shops.length;
  const single = singleShop(order.problem);
  const said = saidOrder(order);
  const saidPrice = said && priceOrder(order.problem, said);
  const name = (craft: number): string => crafts[craft]!.said.name?.value ?? `build ${craft + 1}`;
  const fewer =
    used > 1 ? await solveOrder({ ...order.problem, shopsAtMost: used - 1 }, solver, asked.seconds) : undefined;
  // Without what is sold out to all of them together it would be another order.
  const alone =
    crafts.length > 1 && soldOut.length === 0
      ? await eachAlone(crafts, solver, { ...asked, currency: order.currency })
      : [];
  const budget = crafts.length === 1 ? crafts[0]!.said.budget : undefined;
  return {
    ok: true,
    report: {
      crafts: crafts.map((_, i) => name(i)),
      currency: order.currency,
      order: best,
      lines: linesOf(order, priced),
      parcels: parcelsOf(order, priced),
      everywhere: cheapestEverywhere(order.problem)?.total,
      single: single && { shop: order.problem.shops[single.shop]!.id, total: single.priced.total },
      said: saidPrice?.ok ? saidPrice.priced.total : undefined,
      fewer: fewer?.ok ? { shops: used - 1, total: fewer.order.priced.total } : undefined,
      shares:
        crafts.length > 1
          ? sharesOf(
              order,
              priced,
              crafts.map((_, i) => name(i)),
              alone,
            )
          : [],
      budget: budget && { cents: budget.value.cents, kept: priced.total <= budget.value.cents },
      missing: [
        ...order.unoffered.map(({ craft, need }) => ({ part: need.part, craft: name(craft), why: 'nowhere' as const })),
        ...soldOut.map((line) => ({
          part: whole.lines[line]!.part,
          craft: whole.lines[line]!.wanted.map(({ craft }) => name(craft)).join(', '),
          why: 'sold out' as const,
        })),
        ...order.unnamed.map(({ craft, role }) => ({ part: role, craft: name(craft), why: 'no id' as const })),
      ],
      remarks: order.shops.unrated.map(
        ({ id, currency }) => `${id} is left out: its prices are in ${currency.value} and the file has no rate for it.`,
      ),
    },
  };
}

async function eachAlone(
  crafts: readonly Craft[],
  solver: Solver,
  asked: OrderAsked,
): Promise<readonly (number | undefined)[]> {
  const totals: (number | undefined)[] = [];
  for (const craft of crafts) {
    const own = orderOf([craft], asked);
    const answer = await solveOrder(withoutLines(own, unsupplied(own.problem)).problem, solver, asked.seconds);
    totals.push(answer.ok && answer.order.optimal ? answer.order.priced.total : undefined);
  }
  return totals;
}

function withoutLines(order: BuildOrder, gone: readonly number[]): BuildOrder {
  if (gone.length === 0) return order;
  const kept = order.lines.flatMap((_, i) => (gone.includes(i) ? [] : [i]));
  const offers = order.problem.offers.flatMap((offer, i) => (gone.includes(offer.line) ? [] : [i]));
  return {
    ...order,
    lines: kept.map((i) => order.lines[i]!),
    offers: offers.map((i) => order.offers[i]!),
    problem: {
      ...order.problem,
      lines: kept.map((i) => order.problem.lines[i]!),
      offers: offers.map((i) => ({ ...order.problem.offers[i]!, line: kept.indexOf(order.problem.offers[i]!.line) })),
    },
  };
}

/** Among orders that cost the same: the one with most goods at the preferred shop. Its prices are looked at a cent lower, which decides ties and nothing else once priced again. */
async function preferring(
  problem: OrderProblem,
  best: Order,
  prefer: string | undefined,
  solver: Solver,
): Promise<Order> {
  const shop = problem.shops.findIndex((one) => one.id === prefer);
  if (shop < 0 || !best.optimal) return best;
  const pieces = problem.lines.reduce((sum, line) => sum + line.need, 0) * 2 + 1;
  // All amounts in fractions of a cent small enough that no sum of them reaches a whole one.
  const scaled: OrderProblem = {
    ...problem,
    offers: problem.offers.map((offer) => ({ ...offer, price: offer.price * pieces - (offer.shop === shop ? 1 : 0) })),
    shops: problem.shops.map((one) => ({
      ...one,
      flat: one.flat * pieces,
      tiers: one.tiers.map((tier) => ({ ...tier, cost: tier.cost * pieces })),
      perPiece: one.perPiece * pieces,
      perLine: one.perLine * pieces,
      minimum: Math.max(0, one.minimum * pieces - pieces + 1),
      freeOver: one.freeOver === undefined ? undefined : Math.max(0, one.freeOver * pieces - pieces + 1),
      batterySurcharge: one.batterySurcharge * pieces,
      border: { ...one.border, handling: one.border.handling * pieces, perLine: one.border.perLine * pieces },
    })),
  };
  const answer = await solveOrder(scaled, solver, 5);
  const again = answer.ok ? priceOrder(problem, answer.order.priced.purchases) : undefined;
  return again?.ok && again.priced.total === best.priced.total ? { ...best, priced: again.priced } : best;
}

function linesOf(order: BuildOrder, priced: Priced): readonly ReportLine[] {
  const bought = order.problem.lines.map(() => 0);
  for (const { offer, packs } of priced.purchases) {
    const one = order.problem.offers[offer]!;
    bought[one.line]! += packs * one.pack;
  }
  const lines = priced.purchases.map(({ offer, packs }) => {
    const one = order.problem.offers[offer]!;
    const line = order.problem.lines[one.line]!;
    const shop = order.problem.shops[one.shop]!;
    const alone = shop.batteriesApart && line.battery;
    return {
      part: line.part,
      shop: shop.id,
      packs,
      pieces: packs * one.pack,
      cost: packs * one.price,
      pack: one.pack,
      left: bought[one.line]! - line.need,
      parcel: priced.parcels.findIndex((parcel) => parcel.shop === one.shop && parcel.batteries === alone),
    };
  });
  // By parcel, and within it in the order of the build.
  return lines.sort((a, b) => a.parcel - b.parcel);
}

const parcelsOf = (order: BuildOrder, priced: Priced): readonly ReportParcel[] =>
  priced.parcels.map((parcel, i) => {
    const shop = priced.shops.find((one) => one.shop === parcel.shop)!;
    const first = priced.parcels.findIndex((one) => one.shop === parcel.shop) === i;
    return {
      shop: order.problem.shops[parcel.shop]!.id,
      goods: parcel.goods,
      shipping: parcel.shipping,
      mass: parcel.mass / 10,
      batteries: parcel.batteries,
      free: shop.free,
      taxes: first ? shop.duty + shop.tax + shop.handling : 0,
      days: order.shops.open[parcel.shop]!.days,
    };
  });

/** Goods by pieces, the rest in proportion to the goods; whole cents that add up. */
function sharesOf(
  order: BuildOrder,
  priced: Priced,
  names: readonly string[],
  alone: readonly (number | undefined)[],
): OrderReport['shares'] {
  const goods = names.map(() => 0);
  const cost = order.problem.lines.map(() => 0);
  for (const { offer, packs } of priced.purchases) {
    const one = order.problem.offers[offer]!;
    cost[one.line]! += packs * one.price;
  }
  for (const [line, { wanted }] of order.lines.entries()) {
    const parts = split(
      cost[line]!,
      wanted.map(({ need }) => need.need),
    );
    for (const [i, { craft }] of wanted.entries()) goods[craft]! += parts[i]!;
  }
  const rest = split(priced.shipping + priced.taxes, goods);
  return names.map((name, i) => ({
    name,
    goods: goods[i]!,
    rest: rest[i]!,
    total: goods[i]! + rest[i]!,
    alone: alone[i],
  }));
}

/** Cents split by weights, the odd ones to the largest remainders. */
export function split(cents: number, weights: readonly number[]): readonly number[] {
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const exact = weights.map((weight) => (all === 0 ? cents / weights.length : (cents * weight) / all));
  const floors = exact.map(Math.floor);
  let odd = cents - floors.reduce((sum, one) => sum + one, 0);
  const byRemainder = exact
    .map((one, i) => ({ i, rest: one - floors[i]! }))
    .sort((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of byRemainder) if (odd-- > 0) floors[i]! += 1;
  return floors;
}
