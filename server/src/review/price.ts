/** What the change costs: the cheapest offers of the parts that differ, without shipping. Says which parts nobody offers; guesses no price. */
import type { Craft } from '../build/craft';
import type { ShopsFileFacts } from '../build/generated/facts';
import { motorCount } from '../plan/weight';

export interface PriceChange {
  readonly currency: string;
  /** Of the parts that differ, at the cheapest shop each. */
  readonly before: number;
  readonly after: number;
  /** Ids of differing parts that no shop offers in this currency; with any of them the difference is not known. */
  readonly unknown: readonly string[];
}

type Shops = readonly ShopsFileFacts[];

export function priceChange(
  before: Craft | undefined,
  after: Craft | undefined,
  shopsBefore: Shops,
  shopsAfter: Shops,
): PriceChange | undefined {
  if (shopsAfter.length === 0 || shopsBefore.length === 0) return undefined;
  const [old, now] = [piecesOf(before), piecesOf(after)];
  const currency = usualCurrency([...shopsBefore, ...shopsAfter], new Set([...old.keys(), ...now.keys()]));
  if (currency === undefined) return undefined;
  const sum = { before: 0, after: 0 };
  const unknown = new Set<string>();
  let differs = false;
  for (const id of new Set([...old.keys(), ...now.keys()])) {
    const a = old.has(id) ? cheapest(shopsBefore, id, old.get(id)!, currency) : 0;
    const b = now.has(id) ? cheapest(shopsAfter, id, now.get(id)!, currency) : 0;
    if (old.get(id) === now.get(id) && a === b) continue;
    differs = true;
    if (a === undefined || b === undefined) unknown.add(id);
    sum.before += a ?? 0;
    sum.after += b ?? 0;
  }
  return differs ? { currency, ...sum, unknown: [...unknown] } : undefined;
}

interface Priced {
  readonly use?: { readonly value: string };
  readonly count?: { readonly value: number };
  readonly spares?: { readonly value: number };
}

/** Pieces to buy of each part that is taken from a parts file. */
export function piecesOf(craft: Craft | undefined): ReadonlyMap<string, number> {
  const pieces = new Map<string, number>();
  if (!craft) return pieces;
  const add = (facts: Priced | undefined, usual: number): void => {
    const id = facts?.use?.value;
    if (id === undefined) return;
    const wanted = (facts?.count?.value ?? usual) + (facts?.spares?.value ?? 0);
    pieces.set(id, (pieces.get(id) ?? 0) + wanted);
  };
  for (const [role, facts] of Object.entries(craft.said.parts ?? {})) {
    if (role === 'where' || role === 'used') continue;
    const table = facts as { is?: string; entries?: ReadonlyMap<string, Priced> } & Priced;
    if (table.is === 'table') for (const one of table.entries!.values()) add(one, 1);
    else add(table, role === 'motors' || role === 'propellers' ? motorCount(craft) : 1);
  }
  for (const pack of craft.packs) add(pack.facts as Priced, 1);
  return pieces;
}

interface Offer {
  readonly price: number;
  readonly pack: number;
}

function offersOf(shops: Shops, id: string): ReadonlyMap<string, readonly Offer[]> {
  const found = new Map<string, Offer[]>();
  for (const file of shops)
    for (const shop of file.shops?.entries.values() ?? []) {
      const currency = shop.currency?.value;
      for (const offer of shop.offers?.entries.get(id)?.items ?? []) {
        if (currency === undefined || !offer.price) continue;
        const list = found.get(currency) ?? [];
        list.push({ price: Number(offer.price.value), pack: Math.max(1, Number(offer.pack?.value ?? 1)) });
        found.set(currency, list);
      }
    }
  return found;
}

function cheapest(shops: Shops, id: string, pieces: number, currency: string): number | undefined {
  const prices = (offersOf(shops, id).get(currency) ?? []).map(({ price, pack }) => Math.ceil(pieces / pack) * price);
  return prices.length > 0 ? Math.min(...prices) : undefined;
}

/** The currency in which most of the parts are offered; what is offered in others only counts as not offered. */
function usualCurrency(shops: Shops, ids: ReadonlySet<string>): string | undefined {
  const counts = new Map<string, number>();
  for (const id of ids)
    for (const currency of offersOf(shops, id).keys()) counts.set(currency, (counts.get(currency) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))[0]?.[0];
}
