/** What a patient builder does: each part where it is cheapest, then one part after the other moved for as long as that saves. Knows no solver. */
import { coversOf, offersFor } from '../../server/src/plan/order-covers';
import type { OrderProblem, Purchase } from '../../server/src/plan/order-model';
import { priceOrder } from '../../server/src/plan/order-price';

export function byHand(problem: OrderProblem): number | undefined {
  const ways = problem.lines.map((line, index) =>
    line.whole
      ? problem.shops.flatMap((_, shop) => coversOf(offersFor(problem, index, shop), line.need)!)
      : coversOf(offersFor(problem, index), line.need, 50_000)!,
  );
  const total = (choice: readonly number[]): number => {
    const answer = priceOrder(
      problem,
      choice.flatMap((way, line) => ways[line]![way] as readonly Purchase[]),
    );
    return answer.ok ? answer.priced.total : 1e12 * answer.refused.length;
  };
  if (ways.some((one) => one.length === 0)) return undefined;
  const goods = (cover: readonly Purchase[]): number =>
    cover.reduce((sum, { offer, packs }) => sum + problem.offers[offer]!.price * packs, 0);
  const choice = ways.map((one) => one.reduce((best, cover, i) => (goods(cover) < goods(one[best]!) ? i : best), 0));
  let best = total(choice);
  for (let moved = true; moved; ) {
    moved = false;
    for (const [line, all] of ways.entries())
      for (let way = 0; way < all.length; way++) {
        const tried = choice.with(line, way);
        const value = total(tried);
        if (value >= best) continue;
        best = value;
        choice[line] = way;
        moved = true;
      }
  }
  return best < 1e12 ? best : undefined;
}
