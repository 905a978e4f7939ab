/** The lowest price of each part in the shops files of a workspace. Plans no order: shipping and packs are another matter. */
import type { Workspace } from './workspace';

export interface Offer {
  /** Price of one piece */
  readonly each: number;
  readonly currency: string;
  readonly shop: string;
}

export function cheapestOffers(workspace: Workspace): ReadonlyMap<string, Offer> {
  const best = new Map<string, Offer>();
  for (const file of workspace.shops())
    for (const [shop, facts] of file.shops?.entries ?? [])
      for (const [part, offers] of facts.offers?.entries ?? [])
        for (const offer of offers.items) {
          if (!offer.price || offer.stock?.value === 0) continue;
          const each = offer.price.value / Math.max(1, offer.pack?.value ?? 1);
          const currency = facts.currency?.value ?? '';
          const known = best.get(part);
          // Prices in different currencies are not compared; the first one seen stays.
          if (!known || (known.currency === currency && each < known.each)) best.set(part, { each, currency, shop });
        }
  return best;
}
