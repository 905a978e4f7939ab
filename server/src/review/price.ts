/** What the change costs: the cheapest offers of the parts that differ, without shipping. Says which parts nobody offers; guesses no price. */
import type { Craft } from '../build/craft';
import { type BuildOrder, cheapestAt, orderOf } from '../plan/order-build';
import { costOf } from '../plan/order-covers';
import { worked } from '../plan/worked';

export interface PriceChange {
  readonly currency: string;
  /** Of the parts that differ, at the cheapest shop each. */
  readonly before: number;
  readonly after: number;
  /** Ids of differing parts that no shop offers at a rate to this currency; with any of them the difference is not known. */
  readonly unknown: readonly string[];
}

/** Pieces to buy of each part, with their cost in cents where somebody offers it. */
type Bought = ReadonlyMap<string, { readonly pieces: number; readonly cost: number | undefined }>;

export function priceChange(before: Craft | undefined, after: Craft | undefined): PriceChange | undefined {
  // Each side has the shops of its own version; both are priced in the currency of the newer one.
  const currency = orderWith(after ?? before)?.currency;
  const old = before && boughtIn(orderWith(before, currency));
  const now = after && boughtIn(orderWith(after, currency));
  if (currency === undefined || (before && !old) || (after && !now)) return undefined;
  // Shops that sell nothing of a build say nothing of its price.
  if (![...(old?.values() ?? []), ...(now?.values() ?? [])].some(({ cost }) => cost !== undefined)) return undefined;
  const sum = { before: 0, after: 0 };
  const unknown: string[] = [];
  let differs = false;
  for (const part of new Set([...(old?.keys() ?? []), ...(now?.keys() ?? [])])) {
    const nothing = { pieces: 0, cost: 0 };
    const [a, b] = [old?.get(part) ?? nothing, now?.get(part) ?? nothing];
    if (a.pieces === b.pieces && a.cost === b.cost) continue;
    differs = true;
    if (a.cost === undefined || b.cost === undefined) unknown.push(part);
    sum.before += a.cost ?? 0;
    sum.after += b.cost ?? 0;
  }
  return differs ? { currency, before: sum.before / 100, after: sum.after / 100, unknown } : undefined;
}

/** Nothing without shops. @param currency instead of the craft's own */
function orderWith(craft: Craft | undefined, currency?: string): BuildOrder | undefined {
  const own = craft && worked(craft, undefined, 'worked.order')?.value.order;
  return own && currency !== undefined && own.currency !== currency ? orderOf([craft], { currency }) : own;
}

function boughtIn(order: BuildOrder | undefined): Bought | undefined {
  if (!order) return undefined;
  const { lines, problem, unoffered } = order;
  const offered = lines.map(({ part }, line) => {
    const packs = cheapestAt(problem, line);
    return [part, { pieces: problem.lines[line]!.need, cost: packs && costOf(problem, packs) }] as const;
  });
  const bought = new Map<string, { pieces: number; cost: number | undefined }>(offered);
  for (const { need } of unoffered)
    bought.set(need.part, { pieces: (bought.get(need.part)?.pieces ?? 0) + need.need, cost: undefined });
  return bought;
}
