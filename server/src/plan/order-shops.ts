/** Shops files as an order sees them: every price in whole cents of the buyer's currency, by the rates in the file. Leaves out what it cannot compare, and says so. */
import type { Fact } from '../build/fact';
import type { ShopsFileFacts } from '../build/generated/facts';
import type { Border, OrderShop } from './order-model';

export type ShopFacts =
  NonNullable<ShopsFileFacts['shops']> extends { entries: ReadonlyMap<string, infer T> } ? T : never;
export type OfferFacts =
  NonNullable<ShopFacts['offers']> extends {
    entries: ReadonlyMap<string, { items: readonly (infer T)[] }>;
  }
    ? T
    : never;

export interface ShopOffer {
  readonly part: string;
  /** Cents of the buyer's currency for one pack. */
  readonly price: number;
  readonly pack: number;
  readonly stock: number | undefined;
  readonly facts: OfferFacts;
}

export interface OpenShop {
  readonly shop: OrderShop;
  readonly facts: ShopFacts;
  readonly offers: readonly ShopOffer[];
  /** Days from order to door, when the file says any. */
  readonly days: number | undefined;
}

export interface Shops {
  readonly currency: string;
  readonly open: readonly OpenShop[];
  /** By part. */
  readonly offersOf: ReadonlyMap<string, readonly { readonly shop: OpenShop; readonly offer: ShopOffer }[]>;
  /** Shops whose currency has no rate to the buyer's. */
  readonly unrated: readonly { readonly id: string; readonly currency: Fact<string> }[];
  /** The latest date anywhere in the files: what old is measured from, so that the answer stays the same tomorrow. */
  readonly newest: string | undefined;
}

/** Remembered for as long as the files are the same: they are read once, and every keystroke in a build asks. */
export function openShops(files: readonly ShopsFileFacts[], asked = ''): Shops {
  const known = opened.get(files) ?? new Map<string, Shops>();
  opened.set(files, known);
  const shops = known.get(asked) ?? readShops(files, asked === '' ? undefined : asked);
  known.set(asked, shops);
  return shops;
}

const opened = new WeakMap<readonly ShopsFileFacts[], Map<string, Shops>>();

function readShops(files: readonly ShopsFileFacts[], asked: string | undefined): Shops {
  const currency = asked ?? files.flatMap((file) => file.currency?.value ?? [])[0] ?? commonCurrency(files);
  const open: OpenShop[] = [];
  const unrated: { id: string; currency: Fact<string> }[] = [];
  const seen = new Set<string>();
  for (const file of files)
    for (const [id, facts] of file.shops?.entries ?? []) {
      if (seen.has(id)) continue;
      seen.add(id);
      const rate = rateOf(file, facts.currency?.value, currency);
      if (rate === undefined) {
        unrated.push({ id, currency: facts.currency! });
        continue;
      }
      const shop = shopOf(id, facts, rate, borderOf(file, facts));
      const days = (facts['handling-days']?.value ?? 0) + (facts['transit-days']?.value ?? 0);
      open.push({
        shop,
        facts,
        offers: offersOf(facts, rate),
        days: facts['handling-days'] || facts['transit-days'] ? days : undefined,
      });
    }
  const byPart = new Map<string, { shop: OpenShop; offer: ShopOffer }[]>();
  for (const shop of open)
    for (const offer of shop.offers) {
      const list = byPart.get(offer.part);
      if (list) list.push({ shop, offer });
      else byPart.set(offer.part, [{ shop, offer }]);
    }
  return { currency, open, offersOf: byPart, unrated, newest: newestDate(files) };
}

/** Cents of the buyer's currency, half a cent up; in the decimals that were written, since 40.10 at 1.15 is a little less than 46.115 in binary. */
const cents = (fact: Fact<number> | undefined, rate: number): number =>
  Math.round(Number(((fact?.value ?? 0) * rate * 100).toPrecision(12)));

/** Of the buyer's currency for one unit; a file's rates are to the currency it names as the buyer's. */
export function rateOf(file: ShopsFileFacts, from: string | undefined, to: string): number | undefined {
  if (from === undefined || from === to) return 1;
  const own = file.currency?.value ?? to;
  const rate = (currency: string): number | undefined =>
    currency === own ? 1 : file.rates?.entries.get(currency)?.value;
  const [a, b] = [rate(from), rate(to)];
  return a === undefined || !b ? undefined : a / b;
}

function shopOf(id: string, facts: ShopFacts, rate: number, border: Border): OrderShop {
  const tiers = (facts.shipping?.items ?? []).map((tier) => ({
    upTo: tier['up-to'] && Math.round(tier['up-to'].value * 1e4),
    cost: cents(tier.cost, rate),
  }));
  return {
    id,
    flat: cents(facts.flat, rate),
    tiers: tiers.sort((a, b) => (a.upTo ?? Number.POSITIVE_INFINITY) - (b.upTo ?? Number.POSITIVE_INFINITY)),
    perPiece: cents(facts['per-item'], rate),
    perLine: cents(facts['per-line'], rate),
    freeOver: facts['free-over'] && cents(facts['free-over'], rate),
    minimum: cents(facts.minimum, rate),
    sendsBatteries: facts['no-batteries']?.value !== true,
    batteriesApart: facts['batteries-apart']?.value === true,
    batterySurcharge: cents(facts['battery-surcharge'], rate),
    border,
  };
}

function borderOf(file: ShopsFileFacts, facts: ShopFacts): Border {
  const region = facts.region?.value;
  const rules = region === undefined ? undefined : file.customs?.entries.get(region);
  // Fees at the border are said in the buyer's own currency.
  return {
    duty: Math.round((rules?.duty?.value ?? 0) * 1e4),
    tax: facts['tax-included']?.value === true ? 0 : Math.round((rules?.tax?.value ?? 0) * 1e4),
    handling: cents(rules?.handling, 1),
    perLine: cents(rules?.['per-line'], 1),
  };
}

const offersOf = (facts: ShopFacts, rate: number): readonly ShopOffer[] =>
  [...(facts.offers?.entries ?? [])].flatMap(([part, list]) =>
    list.items.flatMap((offer) => {
      const pack = offer.pack?.value ?? 1;
      if (!offer.price || offer.price.value < 0 || pack < 1) return [];
      return [{ part, price: cents(offer.price, rate), pack, stock: offer.stock?.value, facts: offer }];
    }),
  );

function commonCurrency(files: readonly ShopsFileFacts[]): string {
  const counts = new Map<string, number>();
  for (const file of files)
    for (const shop of file.shops?.entries.values() ?? [])
      if (shop.currency) counts.set(shop.currency.value, (counts.get(shop.currency.value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))[0]?.[0] ?? 'EUR';
}

function newestDate(files: readonly ShopsFileFacts[]): string | undefined {
  const dates = files.flatMap((file) => [
    ...(file['rates-seen'] ? [file['rates-seen'].value] : []),
    ...[...(file.shops?.entries.values() ?? [])].flatMap((shop) =>
      [...(shop.offers?.entries.values() ?? [])].flatMap((list) =>
        list.items.flatMap((offer) => (offer.seen ? [offer.seen.value] : [])),
      ),
    ),
  ]);
  return dates.sort().at(-1);
}

/** Whole days from one date to another. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / 864e5);
