/** What the shops say, by the parts they sell: offers, and the terms that an order of them depends on. Prices nothing. */
import { kidOf } from '../build/slot';
import type { Workspace } from '../library/workspace';
import { isOnlyWords } from './library';
import { nowhere, type Said, type SaidMap, saidOf } from './said';

export interface ShopsSaid {
  readonly all: SaidMap;
  /** What matters to a build that uses this part. */
  readonly byPart: ReadonlyMap<string, SaidMap>;
}

const memory = new WeakMap<Workspace, { readonly version: number; readonly said: ShopsSaid }>();

export function shopsSaid(workspace: Workspace): ShopsSaid {
  const known = memory.get(workspace);
  if (known?.version === workspace.version) return known.said;
  const said = readShops(workspace);
  memory.set(workspace, { version: workspace.version, said });
  return said;
}

function readShops(workspace: Workspace): ShopsSaid {
  const all = new Map<string, Said>();
  const byPart = new Map<string, Map<string, Said>>();
  for (const { file, document } of workspace.documents('shops')) {
    if (!document.slot) continue;
    const layer = { slot: document.slot, document, file: file.uri };
    const ofShop = new Map<string, [string, Said][]>();
    const offers: { readonly shop: string; readonly part: string; readonly entry: [string, Said] }[] = [];
    for (const shop of kidOf(document.slot, 'shops')?.kids ?? []) {
      const table = kidOf(shop, 'offers');
      for (const [part, one] of table ? saidOf({ ...layer, slot: table }, nowhere) : [])
        offers.push({ shop: shop.key, part, entry: [`shops.${shop.key}.offers.${part}`, offerSaid(one)] });
      const terms = [...saidOf({ ...layer, slot: shop }, nowhere)].filter(([path]) => !path.startsWith('offers.'));
      ofShop.set(shop.key, shown(terms, `shops.${shop.key}.`));
    }
    const whole = [...saidOf(layer, nowhere)].filter(([path]) => !/^(?:shops\.|dryfit$)/.test(path));
    const general = shown(whole, 'shops: ');
    for (const { shop, part, entry } of offers) {
      const known = byPart.get(part) ?? new Map<string, Said>();
      for (const [path, one] of [entry, ...ofShop.get(shop)!, ...general]) known.set(path, one);
      byPart.set(part, known);
    }
    for (const [path, one] of [...offers.map(({ entry }) => entry), ...[...ofShop.values()].flat(), ...general])
      all.set(path, one);
  }
  return { all, byPart };
}

const shown = (said: readonly (readonly [string, Said])[], prefix: string): [string, Said][] =>
  said
    .filter(([path]) => !isOnlyWords(path) && !path.endsWith('-seen'))
    .map(([path, one]) => [prefix + path, { ...one, head: 'shops', through: one.at }]);

/** An offer without when it was seen: a price that was looked up again is the same price. */
function offerSaid(said: Said): Said {
  const rows = said.rows?.map((row) => row.replace(/(?:, )?(?:seen|note) [^,]*/g, '').replace(/^, /, ''));
  return { ...said, text: rows?.join('; ') ?? said.text, rows, head: 'shops', through: said.at };
}
