/** What can be said of a craft's order on a keystroke: needs with their offers, the order its `from` lines make, and the least its goods can cost. Loads no solver. */
import type { Craft } from '../build/craft';
import { lazily } from '../physics/lazily';
import { type BuildOrder, orderOf, saidOrder } from './order-build';
import { type Purchase, packsFor } from './order-model';
import type { OrderNeed } from './order-needs';
import { type Priced, priceOrder, type Refused } from './order-price';
import type { OpenShop, ShopOffer } from './order-shops';
import { cheapestEverywhere, leastGoods, singleShop } from './order-solve';

export interface CraftOrder {
  readonly order: BuildOrder;
  readonly needs: readonly OrderNeed[];
  /** Offers of a part, also those that are sold out. */
  readonly offersOf: (part: string) => readonly { readonly shop: OpenShop; readonly offer: ShopOffer }[];
  /** Cents below which the goods cannot be had, whatever is done. */
  readonly least: number;
  /** The order as the build says it, when every line names a shop that has it. */
  readonly said: SaidOrder | undefined;
}

export interface SaidOrder {
  readonly purchases: readonly Purchase[];
  readonly priced: Priced | undefined;
  readonly refused: readonly Refused[];
  /** A cheaper one that needs no search: each line at its cheapest, all from one shop, or one line or shop moved. */
  readonly better: Priced | undefined;
  /** Each line stands where its goods are cheapest. */
  readonly eachCheapest: boolean;
}

/** Each part is worked out when somebody looks at it, as most keystrokes ask for little of it. */
export function craftOrder(craft: Craft): CraftOrder {
  const order = orderOf([craft]);
  return lazily<CraftOrder>({
    order: () => order,
    needs: () => order.needs[0] ?? [],
    offersOf: () => (part) => order.shops.offersOf.get(part) ?? [],
    least: () => leastGoods(order.problem),
    said: () => {
      const purchases = order.lines.length === 0 ? undefined : saidOrder(order);
      return purchases && saidOf(order, purchases);
    },
  });
}

function saidOf(order: BuildOrder, purchases: readonly Purchase[]): SaidOrder {
  const { problem } = order;
  const answer = priceOrder(problem, purchases);
  const priced = answer.ok ? answer.priced : undefined;
  return lazily<SaidOrder>({
    purchases: () => purchases,
    priced: () => priced,
    refused: () => (answer.ok ? [] : answer.refused),
    better: () => priced && betterThan(order, priced, purchases),
    eachCheapest: () => priced !== undefined && cheapestEverywhere(problem)?.goods === priced.goods,
  });
}

/** The cheapest of what is found by moving single lines and by giving shops up; an upper bound, not the optimum. */
function betterThan(order: BuildOrder, priced: Priced, purchases: readonly Purchase[]): Priced | undefined {
  const { problem } = order;
  let best = priced;
  const take = (tried: readonly Purchase[]): void => {
    const answer = priceOrder(problem, tried);
    if (answer.ok && answer.priced.total < best.total) best = answer.priced;
  };
  const single = singleShop(problem);
  if (single) take(single.priced.purchases);
  const everywhere = cheapestEverywhere(problem);
  if (everywhere) take(everywhere.purchases);
  const lineOf = (one: Purchase): number => problem.offers[one.offer]!.line;
  for (const [line, { need }] of problem.lines.entries())
    for (const [offer, own] of problem.offers.entries()) {
      const packs = packsFor(need, own);
      if (own.line === line && (own.stock ?? packs) >= packs)
        take([...purchases.filter((one) => lineOf(one) !== line), { offer, packs }]);
    }
  return best.total < priced.total ? best : undefined;
}
