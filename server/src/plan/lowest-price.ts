/** The lowest price of one piece of a part over all shops. Plans no order: shipping and packs are another matter. */
import type { Shops } from './order-shops';

export interface LowestPrice {
  /** Cents of the buyer's currency */
  readonly each: number;
  readonly shop: string;
}

/** Shops without a rate to the buyer's currency are left out, as in an order. */
export function lowestPrice(shops: Shops, part: string): LowestPrice | undefined {
  let lowest: LowestPrice | undefined;
  for (const { shop, offer } of shops.offersOf.get(part) ?? []) {
    if (offer.stock === 0) continue;
    const each = Math.round(offer.price / offer.pack);
    if (!lowest || each < lowest.each) lowest = { each, shop: shop.shop.id };
  }
  return lowest;
}
