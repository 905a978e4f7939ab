/**
 * The order as a mixed-integer program in the text form that solvers read, and back from its answer. Every rule of a shop is
 * one group of rows; all numbers are whole. Solves nothing.
 */
import { coversOf, offersFor } from './order-covers';
import { type OrderOffer, type OrderProblem, type OrderShop, type Purchase, packsFor } from './order-model';

export interface OrderProgram {
  readonly text: string;
  readonly purchasesFrom: (value: (name: string) => number) => readonly Purchase[];
}

type Terms = Map<string, number>;

export function orderProgram(problem: OrderProblem): OrderProgram {
  const rows: string[] = [];
  const objective: Terms = new Map();
  const binaries = new Set<string>();
  const integers = new Set<string>();
  const bounds: string[] = [];
  const columns: { name: string; purchases: readonly Purchase[]; integer: boolean }[] = [];
  const row = (terms: Terms, sense: '<=' | '>=' | '=', right: number): void => {
    const kept = [...terms].filter(([, factor]) => factor !== 0);
    if (kept.length > 0) rows.push(` r${rows.length}: ${written(kept)} ${sense} ${right}`);
  };
  const add = (terms: Terms, name: string, factor: number): Terms =>
    factor === 0 ? terms : terms.set(name, (terms.get(name) ?? 0) + factor);

  const sums = problem.shops.map(() => ({
    goods: new Map() as Terms,
    // One load, or packs apart.
    loads: [newLoad(), newLoad()] as const,
    lines: new Map() as Terms,
  }));
  const isBought = (line: number, shop: number): string => `u${line}_${shop}`;

  for (const [index, line] of problem.lines.entries()) {
    const whole: Terms = new Map();
    const covered: Terms = new Map();
    const covers = line.whole ? coversByShop(index, line.need) : undefined;
    for (const [at, shop] of problem.shops.entries()) {
      const offers = offersFor(problem, index, at);
      if (offers.length === 0 || (line.battery && !shop.sendsBatteries)) continue;
      const bought = isBought(index, at);
      const load = sums[at]!.loads[shop.batteriesApart && line.battery ? 1 : 0];
      binaries.add(bought);
      add(sums[at]!.lines, bought, 1);
      if (line.battery) load.batteries.push(bought);
      load.uses.push(bought);
      add(whole, bought, 1);
      if (covers) {
        const ways: Terms = new Map([[bought, -1]]);
        for (const [n, cover] of covers[at]!.entries()) {
          const name = `x${index}_${at}_${n}`;
          binaries.add(name);
          columns.push({ name, purchases: cover, integer: false });
          add(ways, name, 1);
          for (const { offer, packs } of cover) count(name, problem.offers[offer]!, packs, at, load);
        }
        row(ways, '=', 0);
        continue;
      }
      const some: Terms = new Map([[bought, -1]]);
      for (const { index: offer, offer: one } of offers) {
        const name = `n${offer}`;
        const most = mostOf(one);
        integers.add(name);
        bounds.push(` 0 <= ${name} <= ${most}`);
        columns.push({ name, purchases: [{ offer, packs: 1 }], integer: true });
        count(name, one, 1, at, load);
        add(covered, name, one.pack);
        add(some, name, 1);
        row(
          new Map([
            [name, 1],
            [bought, -most],
          ]),
          '<=',
          0,
        );
      }
      row(some, '>=', 0);
    }
    if (line.whole) row(whole.size > 0 ? whole : new Map([['nothing', 1]]), '=', 1);
    if (!covers) packRows(index, covered);
  }

  /** The ways to buy a whole line at each shop, when all can be listed. */
  function coversByShop(line: number, need: number): readonly (readonly (readonly Purchase[])[])[] | undefined {
    const all = problem.shops.map((_, shop) => coversOf(offersFor(problem, line, shop), need));
    return all.every((one) => one !== undefined) ? all : undefined;
  }

  /** Pieces cover the need, and no pack is bought that could be left out. */
  function packRows(index: number, covered: Terms): void {
    const { need } = problem.lines[index]!;
    row(covered.size > 0 ? covered : new Map([['nothing', 1]]), '>=', need);
    const largest = [...covered].reduce((sum, [name, pack]) => sum + pack * mostOf(offerOf(name)), 0);
    const packs = new Set(covered.values());
    for (const [name, pack] of covered) {
      const used = `b${name}`;
      binaries.add(used);
      row(
        new Map([
          [name, 1],
          [used, -mostOf(offerOf(name))],
        ]),
        '<=',
        0,
      );
      // Used: pieces <= need - 1 + pack; else no limit of its own.
      const limit = need - 1 + pack;
      if (packs.size === 1) row(covered, '<=', limit);
      else row(add(new Map(covered), used, largest - limit), '<=', largest);
    }
  }
  function mostOf(offer: OrderOffer): number {
    return Math.min(offer.stock ?? Number.POSITIVE_INFINITY, packsFor(problem.lines[offer.line]!.need, offer));
  }
  /** Behind a count of packs. */
  function offerOf(name: string): OrderOffer {
    return problem.offers[Number(name.slice(1))]!;
  }

  function count(
    name: string,
    offer: { pack: number; price: number; line: number },
    packs: number,
    at: number,
    load: Load,
  ): void {
    add(objective, name, offer.price * packs);
    add(sums[at]!.goods, name, offer.price * packs);
    add(load.pieces, name, offer.pack * packs);
    add(load.mass, name, problem.lines[offer.line]!.mass * offer.pack * packs);
  }

  const used: Terms = new Map();
  for (const [at, shop] of problem.shops.entries()) shopRows(at, shop);
  if (problem.shopsAtMost !== undefined) row(used, '<=', problem.shopsAtMost);

  function shopRows(at: number, shop: OrderShop): void {
    const { goods, loads, lines } = sums[at]!;
    if (lines.size === 0) return;
    const open = `y${at}`;
    binaries.add(open);
    add(used, open, 1);
    for (const bought of lines.keys())
      row(
        new Map([
          [bought, 1],
          [open, -1],
        ]),
        '<=',
        0,
      );
    if (shop.minimum > 0) row(add(new Map(goods), open, -shop.minimum), '>=', 0);
    const free = `f${at}`;
    if (shop.freeOver !== undefined) {
      binaries.add(free);
      row(add(new Map(goods), free, -shop.freeOver), '>=', 0);
      row(
        new Map([
          [free, 1],
          [open, -1],
        ]),
        '<=',
        0,
      );
    }
    const shipping: Terms = new Map();
    for (const [n, load] of loads.entries()) if (load.uses.length > 0) loadRows(at, shop, n, load, free, shipping);
    for (const [name, factor] of shipping) add(objective, name, factor);
    for (const bought of lines.keys()) add(objective, bought, shop.border.perLine);
    taxRows(at, shop, goods, shipping);
  }

  function loadRows(at: number, shop: OrderShop, n: number, load: Load, free: string, shipping: Terms): void {
    const sent = `z${at}_${n}`;
    binaries.add(sent);
    for (const bought of load.uses)
      row(
        new Map([
          [bought, 1],
          [sent, -1],
        ]),
        '<=',
        0,
      );
    const fee: Terms = new Map([[sent, shop.flat]]);
    let dearest = shop.flat;
    if (shop.tiers.length > 0) {
      const one: Terms = new Map([[sent, -1]]);
      const room: Terms = new Map();
      const heaviest = largestOf(load.mass);
      for (const [t, tier] of shop.tiers.entries()) {
        const name = `w${at}_${n}_${t}`;
        binaries.add(name);
        add(one, name, 1);
        add(fee, name, tier.cost);
        add(room, name, -Math.min(tier.upTo ?? heaviest, heaviest));
      }
      row(one, '=', 0);
      row(new Map([...load.mass, ...room]), '<=', 0);
      dearest += Math.max(...shop.tiers.map((tier) => tier.cost));
    }
    for (const [name, pieces] of load.pieces) add(fee, name, shop.perPiece * pieces);
    for (const bought of load.uses) add(fee, bought, shop.perLine);
    dearest += shop.perPiece * largestOf(load.pieces) + shop.perLine * load.uses.length;
    if (shop.freeOver === undefined) for (const [name, factor] of fee) add(shipping, name, factor);
    else if (dearest > 0) {
      // What is paid is at least the fee, unless shipping is free.
      const paid = `s${at}_${n}`;
      row(add(new Map([...fee].map(([name, factor]) => [name, -factor])), free, dearest).set(paid, 1), '>=', 0);
      add(shipping, paid, 1);
    }
    if (shop.batterySurcharge > 0 && load.batteries.length > 0) {
      const holds = `h${at}_${n}`;
      binaries.add(holds);
      for (const bought of load.batteries)
        row(
          new Map([
            [bought, 1],
            [holds, -1],
          ]),
          '<=',
          0,
        );
      add(shipping, holds, shop.batterySurcharge);
    }
    add(objective, sent, shop.border.handling);
  }

  /** Whole cents, half a cent upwards: 10000 x duty >= share x goods - 4999. */
  function taxRows(at: number, shop: OrderShop, goods: Terms, shipping: Terms): void {
    const { duty, tax } = shop.border;
    const both: Terms = new Map(goods);
    for (const [name, factor] of shipping) add(both, name, factor);
    if (duty > 0) {
      const name = `d${at}`;
      integers.add(name);
      row(new Map([...goods].map(([key, factor]) => [key, -factor * duty])).set(name, 10000), '>=', -4999);
      add(objective, name, 1);
      add(both, name, 1);
    }
    if (tax > 0) {
      const name = `t${at}`;
      integers.add(name);
      row(new Map([...both].map(([key, factor]) => [key, -factor * tax])).set(name, 10000), '>=', -4999);
      add(objective, name, 1);
    }
  }

  /** More than any order can reach: all that could be bought at once. */
  function largestOf(terms: Terms): number {
    let sum = 0;
    for (const [name, factor] of terms) sum += factor * (name.startsWith('n') ? mostOf(offerOf(name)) : 1);
    return sum;
  }

  const lines = [
    'Minimize',
    ` cost: ${objective.size > 0 ? written([...objective]) : '0 nothing'}`,
    'Subject To',
    ...rows,
    'Bounds',
    ...bounds,
    ' nothing = 0',
    'Generals',
    ` ${wrapped([...integers])}`,
    'Binaries',
    ` ${wrapped([...binaries])}`,
    'End',
  ];
  return {
    text: `${lines.join('\n')}\n`,
    purchasesFrom: (value) => {
      const packs = new Map<number, number>();
      for (const { name, purchases, integer } of columns) {
        const times = Math.round(value(name));
        if (times > 0)
          for (const one of purchases)
            packs.set(one.offer, (packs.get(one.offer) ?? 0) + one.packs * (integer ? times : 1));
      }
      return [...packs].sort((a, b) => a[0] - b[0]).map(([offer, count]) => ({ offer, packs: count }));
    },
  };
}

interface Load {
  readonly mass: Terms;
  readonly pieces: Terms;
  readonly uses: string[];
  readonly batteries: string[];
}

const newLoad = (): Load => ({ mass: new Map(), pieces: new Map(), uses: [], batteries: [] });

/** Terms with line breaks, as readers of this form bound the length of a line. */
function written(terms: readonly (readonly [string, number])[]): string {
  return terms
    .map(([name, factor], i) => `${i % 12 === 11 ? '\n  ' : ''}${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`)
    .join(' ');
}

const wrapped = (names: readonly string[]): string =>
  names.map((name, i) => (i % 20 === 19 ? `\n ${name}` : name)).join(' ');
