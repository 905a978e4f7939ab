/** What a shops file says that no order could follow, found at its place. Looks at one file in its workspace; prices no order. */
import type { Pointable } from '../build/fact';
import { type Finding, type Fix, fingerprintOf, type Severity } from '../build/finding';
import type { ShopsFileFacts } from '../build/generated/facts';
import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import { rateOf, type ShopFacts } from '../plan/order-shops';
import { nearest } from '../text/nearest';
import { write } from './edit';
import { grams } from './words';

export const shopFindingNames = [
  'shop-rate-missing',
  'shop-rates-undated',
  'shop-tier-unreached',
  'shop-amount-impossible',
  'shop-shipping-unsaid',
  'shop-defined-twice',
  'offer-part-unknown',
] as const;

type Name = (typeof shopFindingNames)[number];

export function shopFindings(workspace: Workspace, file: SourceFile): readonly Finding[] {
  if (!file.documents.some((document) => document.kind === 'shops')) return [];
  const all = workspace.shops();
  const known = [...workspace.parts().keys()];
  return all.filter((facts) => facts.where?.file === file.uri).flatMap((facts) => inFile(facts, all, known));
}

function inFile(file: ShopsFileFacts, all: readonly ShopsFileFacts[], known: readonly string[]): readonly Finding[] {
  const found: Finding[] = [];
  const say = (check: Name, severity: Severity, at: Pointable, message: string, fixes: readonly Fix[] = []): void => {
    const { at: place } = at;
    found.push({ check, severity, message, at: place, related: [], fixes, fingerprint: fingerprintOf(check, place) });
  };
  if (file.rates && !file['rates-seen'])
    say(
      'shop-rates-undated',
      'information',
      file.rates,
      'These rates have no date. Rates move by a few percent in a month; add `rates-seen:` with the day they were read.',
    );
  for (const [id, shop] of file.shops?.entries ?? []) {
    const twin = all.find((other) => other !== file && other.shops?.entries.has(id));
    if (twin && all.indexOf(twin) < all.indexOf(file))
      say(
        'shop-defined-twice',
        'warning',
        entryOf(shop, id),
        `\`${id}\` is in another shops file as well, and that one is used. Rename one of them, or move its offers there.`,
      );
    const buyer = file.currency?.value;
    if (shop.currency && buyer && rateOf(file, shop.currency.value, buyer) === undefined)
      say(
        'shop-rate-missing',
        'warning',
        shop.currency,
        `Prices of \`${id}\` are in ${shop.currency.value}, and this file has no rate to ${buyer}. Its offers are left out of orders. Add \`${shop.currency.value}:\` under \`rates:\`.`,
      );
    if (!shop.flat && !shop.shipping && !shop['per-item'] && !shop['per-line'] && shop.offers)
      say(
        'shop-shipping-unsaid',
        'information',
        entryOf(shop, id),
        `\`${id}\` says no price for sending; its parcels are counted as free. Add \`flat:\` or \`shipping:\`, and \`flat: 0\` when it is free.`,
      );
    tiers(shop, say);
    amounts(shop, say);
    for (const [part, offers] of shop.offers?.entries ?? []) {
      // Other ids may be those that builds order by; only one that is nearly a part's is a slip.
      const near = known.includes(part) ? undefined : nearest(part, known);
      if (near)
        say(
          'offer-part-unknown',
          'information',
          { ...offers, text: part },
          `No parts file has \`${part}\`, so nobody orders it by that name. Did you mean \`${near}\`?`,
        );
    }
  }
  return found;
}

type Say = (check: Name, severity: Severity, at: Pointable, message: string, fixes?: readonly Fix[]) => void;

function tiers(shop: ShopFacts, say: Say): void {
  let reached = 0;
  for (const tier of shop.shipping?.items ?? []) {
    if (!tier.cost) continue;
    const at = tier['up-to'] ?? tier.cost;
    const limit = tier['up-to']?.value ?? Number.POSITIVE_INFINITY;
    if (limit <= reached)
      say(
        'shop-tier-unreached',
        'warning',
        at,
        `No parcel comes to this price: an earlier one reaches to ${reached === Number.POSITIVE_INFINITY ? 'any weight' : grams(reached)} already. Put them in order of weight, the one without \`up-to\` last.`,
      );
    reached = Math.max(reached, limit);
  }
}

function amounts(shop: ShopFacts, say: Say): void {
  const fees = ['flat', 'per-item', 'per-line', 'free-over', 'minimum', 'battery-surcharge'] as const;
  for (const key of fees) {
    const fact = shop[key];
    if (fact && fact.value < 0)
      say(
        'shop-amount-impossible',
        'error',
        fact,
        `\`${key}\` is ${fact.text}; no shop charges less than nothing. Write what it takes.`,
        [write(fact, fact.text.replace('-', ''))],
      );
  }
  for (const offers of shop.offers?.entries.values() ?? [])
    for (const offer of offers.items) {
      if (offer.price && offer.price.value < 0)
        say(
          'shop-amount-impossible',
          'error',
          offer.price,
          `The price is ${offer.price.text}; the offer is left out of orders. Write the price of one pack.`,
          [write(offer.price, offer.price.text.replace('-', ''))],
        );
      if (offer.pack && offer.pack.value < 1)
        say(
          'shop-amount-impossible',
          'error',
          offer.pack,
          'A pack of none cannot be bought; the offer is left out of orders. Write how many pieces are in one pack.',
          [write(offer.pack, '1')],
        );
    }
}

const entryOf = (shop: ShopFacts, id: string): Pointable => ({ at: shop.where!, text: id });
