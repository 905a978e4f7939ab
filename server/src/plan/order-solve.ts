/** The cheapest order, proved: builds the program, lets a solver answer, prices the answer again in whole cents, and sets it beside what one would do by hand. Loads no solver. */
import { cheapestCover, offersFor } from './order-covers';
import type { OrderProblem, Purchase } from './order-model';
import { type Priced, priceOrder } from './order-price';
import { orderProgram } from './order-program';

/** Solves a program in text form; given by the face that can load one, and fails when it is stopped from outside. */
export type Solver = (program: string, seconds: number) => Promise<Solved>;

/** Plain data, as it may come from another thread. */
export type Solved =
  | {
      readonly status: 'optimal' | 'stopped';
      /** The best value proved to be out of reach. */
      readonly bound: number;
      /** Names of the program's variables with their values. */
      readonly values: readonly (readonly [name: string, value: number])[];
    }
  | { readonly status: 'infeasible' | 'unsolved' };

export interface Order {
  readonly priced: Priced;
  readonly optimal: boolean;
  /** Cents below which no order can be. */
  readonly bound: number;
}

export type OrderAnswer =
  | { readonly ok: true; readonly order: Order }
  | { readonly ok: false; readonly why: 'infeasible' | 'unsolved' };

export async function solveOrder(problem: OrderProblem, solver: Solver, seconds = 20): Promise<OrderAnswer> {
  if (problem.lines.length === 0) {
    const nothing = priceOrder(problem, []);
    if (nothing.ok) return { ok: true, order: { priced: nothing.priced, optimal: true, bound: 0 } };
  }
  const program = orderProgram(problem);
  const solved = await solver(program.text, seconds);
  if (!('values' in solved)) return { ok: false, why: solved.status === 'infeasible' ? 'infeasible' : 'unsolved' };
  const values = new Map(solved.values);
  const again = priceOrder(
    problem,
    program.purchasesFrom((name) => values.get(name) ?? 0),
  );
  // An answer that our own pricing refuses is no answer.
  if (!again.ok || !covers(problem, again.priced.purchases)) return { ok: false, why: 'unsolved' };
  const bound = Math.ceil(solved.bound - 1e-3);
  return {
    ok: true,
    order: {
      priced: again.priced,
      optimal: solved.status === 'optimal' && bound >= again.priced.total,
      bound: Math.min(bound, again.priced.total),
    },
  };
}

/** Every line has its pieces, in stock. */
export function covers(problem: OrderProblem, purchases: readonly Purchase[]): boolean {
  const pieces = problem.lines.map(() => 0);
  for (const { offer: index, packs } of purchases) {
    const offer = problem.offers[index]!;
    if (offer.stock !== undefined && packs > offer.stock) return false;
    pieces[offer.line]! += packs * offer.pack;
  }
  return problem.lines.every((line, i) => pieces[i]! >= line.need);
}

/** Each line where its goods are cheapest, shipping not looked at; nothing when a shop would not send it. */
export function cheapestEverywhere(problem: OrderProblem): Priced | undefined {
  const all = problem.lines.map((_, line) => cheapestCover(problem, line));
  return priced(problem, all);
}

/** Everything from one shop, the cheapest that has it all. */
export function singleShop(problem: OrderProblem): { readonly shop: number; readonly priced: Priced } | undefined {
  const found = problem.shops.flatMap((_, shop) => {
    const one = priced(
      problem,
      problem.lines.map((_, line) => cheapestCover(problem, line, shop)),
    );
    return one ? [{ shop, priced: one }] : [];
  });
  return found.reduce<(typeof found)[number] | undefined>(
    (best, one) => (!best || one.priced.total < best.priced.total ? one : best),
    undefined,
  );
}

function priced(problem: OrderProblem, covers: readonly (readonly Purchase[] | undefined)[]): Priced | undefined {
  if (covers.some((cover) => cover === undefined)) return undefined;
  const answer = priceOrder(problem, covers.flat() as readonly Purchase[]);
  return answer.ok ? answer.priced : undefined;
}

/** Cents that the goods cost at least, wherever they are bought; no order can be cheaper. Lines that nobody offers are left out. */
export const leastGoods = (problem: OrderProblem): number =>
  problem.lines.reduce((sum, { need }, line) => {
    // By the piece, so that packs of several sizes need no search.
    const each = offersFor(problem, line).map(({ offer }) => (offer.price / offer.pack) * need);
    return sum + (each.length > 0 ? Math.ceil(Math.min(...each) - 1e-9) : 0);
  }, 0);

/** Lines that no shop can supply in full, alone or together. */
export const unsupplied = (problem: OrderProblem): readonly number[] =>
  problem.lines.flatMap((line, index) => {
    const offers = offersFor(problem, index).filter(
      ({ offer }) => !line.battery || problem.shops[offer.shop]!.sendsBatteries,
    );
    const pieces = offers.reduce((sum, { offer }) => sum + offer.pack * (offer.stock ?? Number.POSITIVE_INFINITY), 0);
    return pieces >= line.need ? [] : [index];
  });
