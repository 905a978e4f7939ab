/** Prices an order in whole cents: goods, parcels, duty and tax, by each shop's own rules. Chooses nothing. */
import type { OrderProblem, OrderShop, Purchase } from './order-model';

export interface PricedParcel {
  /** Index of the shop. */
  readonly shop: number;
  readonly goods: number;
  readonly shipping: number;
  /** Tenths of a gram. */
  readonly mass: number;
  /** Packs that travel alone. */
  readonly batteries: boolean;
}

export interface PricedShop {
  readonly shop: number;
  readonly goods: number;
  readonly shipping: number;
  readonly duty: number;
  readonly tax: number;
  /** Handling at the border, for parcels and parts. */
  readonly handling: number;
  readonly free: boolean;
}

export interface Priced {
  readonly total: number;
  readonly goods: number;
  readonly shipping: number;
  /** Duty, tax and handling at the border. */
  readonly taxes: number;
  readonly shops: readonly PricedShop[];
  readonly parcels: readonly PricedParcel[];
  readonly purchases: readonly Purchase[];
}

/** Why a shop would not send it. */
export interface Refused {
  readonly shop: number;
  readonly because: 'minimum' | 'too-heavy' | 'batteries';
  /** Goods value in cents, or mass in tenths of a gram, that it was about. */
  readonly value: number;
}

export function priceOrder(
  problem: OrderProblem,
  purchases: readonly Purchase[],
): { readonly ok: true; readonly priced: Priced } | { readonly ok: false; readonly refused: readonly Refused[] } {
  const bought = purchases.filter(({ packs }) => packs > 0);
  const shops: PricedShop[] = [];
  const parcels: PricedParcel[] = [];
  const refused: Refused[] = [];
  for (const [index, shop] of problem.shops.entries()) {
    const own = bought.filter(({ offer }) => problem.offers[offer]!.shop === index);
    if (own.length === 0) continue;
    const loads = loadsOf(problem, shop, own);
    const goods = loads.reduce((sum, load) => sum + load.goods, 0);
    const free = shop.freeOver !== undefined && goods >= shop.freeOver;
    if (goods < shop.minimum) refused.push({ shop: index, because: 'minimum', value: goods });
    if (!shop.sendsBatteries && loads.some((load) => load.batteries))
      refused.push({ shop: index, because: 'batteries', value: 0 });
    let shipping = 0;
    for (const load of loads) {
      const byWeight = tierCost(shop, load.mass);
      if (byWeight === undefined) refused.push({ shop: index, because: 'too-heavy', value: load.mass });
      const fee = free ? 0 : shop.flat + (byWeight ?? 0) + shop.perPiece * load.pieces + shop.perLine * load.lines.size;
      const cost = fee + (load.batteries ? shop.batterySurcharge : 0);
      shipping += cost;
      const alone = load.batteries && shop.batteriesApart;
      parcels.push({ shop: index, goods: load.goods, shipping: cost, mass: load.mass, batteries: alone });
    }
    const lines = new Set(own.map(({ offer }) => problem.offers[offer]!.line)).size;
    const duty = partOf(goods, shop.border.duty);
    const tax = partOf(goods + shipping + duty, shop.border.tax);
    const handling = shop.border.handling * loads.length + shop.border.perLine * lines;
    shops.push({ shop: index, goods, shipping, duty, tax, handling, free });
  }
  if (refused.length > 0) return { ok: false, refused };
  const sum = (of: (shop: PricedShop) => number): number => shops.reduce((total, shop) => total + of(shop), 0);
  const goods = sum((shop) => shop.goods);
  const shipping = sum((shop) => shop.shipping);
  const taxes = sum((shop) => shop.duty + shop.tax + shop.handling);
  return {
    ok: true,
    priced: { total: goods + shipping + taxes, goods, shipping, taxes, shops, parcels, purchases: bought },
  };
}

/** Cents of a share in hundredths of a percent, half a cent upwards; whole numbers all the way. */
export const partOf = (cents: number, share: number): number => Math.floor((cents * share + 5000) / 10000);

interface Load {
  goods: number;
  mass: number;
  pieces: number;
  readonly lines: Set<number>;
  batteries: boolean;
}

function loadsOf(problem: OrderProblem, shop: OrderShop, own: readonly Purchase[]): readonly Load[] {
  const loads = new Map<boolean, Load>();
  for (const { offer: index, packs } of own) {
    const offer = problem.offers[index]!;
    const line = problem.lines[offer.line]!;
    const apart = shop.batteriesApart && line.battery;
    const load = loads.get(apart) ?? { goods: 0, mass: 0, pieces: 0, lines: new Set(), batteries: false };
    load.goods += offer.price * packs;
    load.pieces += offer.pack * packs;
    load.mass += line.mass * offer.pack * packs;
    load.lines.add(offer.line);
    load.batteries ||= line.battery;
    loads.set(apart, load);
  }
  return [...loads.values()];
}

/** Cents by weight; nothing when the shop sends none so heavy. */
export function tierCost(shop: OrderShop, mass: number): number | undefined {
  if (shop.tiers.length === 0) return 0;
  return shop.tiers.find((tier) => tier.upTo === undefined || mass <= tier.upTo)?.cost;
}
