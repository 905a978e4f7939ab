/** What can be said of an order before it is planned: the least its goods cost, what the build's own choice of shops costs, what a line costs where. Solves nothing. */
import type { Craft } from '../build/craft';
import { cheapestCover, costOf } from '../plan/order-covers';
import { worked } from '../plan/worked';
import { money } from '../text/notation/money';

/** Sentences for the whole order; none without a shops file or without a part that can be bought. */
export function orderGlance(craft: Craft): readonly string[] {
  const craftOrder = worked(craft, undefined, 'worked.order')?.value;
  if (!craftOrder) return [];
  const { order, least, said } = craftOrder;
  if (order.lines.length === 0) return [];
  const say = (cents: number): string => money(cents, order.currency);
  const unoffered = new Set(order.unoffered.map(({ need }) => need.part)).size;
  const without =
    unoffered === 0 ? '' : `, without ${unoffered === 1 ? 'one part' : `${unoffered} parts`} that no shops file has`;
  return [
    `The goods cost at least ${say(least)}: each part where it is cheapest, shipping not counted${without}.`,
    !said
      ? 'With a shop behind `from:` at every part, the order as you mean it is priced here.'
      : said.priced
        ? `As the build says it with \`from\`: ${say(said.priced.total)}, of which shipping, duty and tax are ${say(said.priced.shipping + said.priced.taxes)}.`
        : 'As the build says it with `from`, a shop would not send it.',
    'The cheapest order, proved: **Dryfit: Plan the order** in the editor, or `dryfit order` with this file.',
  ];
}

/** What one line costs at the shop that its `from` names, beside the cheapest goods. */
export function lineGlance(craft: Craft, role: string): readonly string[] {
  const craftOrder = worked(craft, undefined, 'worked.order')?.value;
  const need = craftOrder?.needs.find((one) => one.role === role);
  if (!craftOrder || !need?.from) return [];
  const { problem, shops, lines, currency } = craftOrder.order;
  const line = lines.findIndex(({ part }) => part === need.part);
  if (line < 0) return need.need === 0 ? ['Nothing of it has to be bought.'] : [];
  const pieces = problem.lines[line]!.need;
  const what = `${pieces} x ${need.part}`;
  const at = (shop: number | undefined): string | undefined => {
    const cover = cheapestCover(problem, line, shop);
    return cover && money(costOf(problem, cover), currency);
  };
  const shop = shops.open.findIndex((one) => one.shop.id === need.from!.value);
  const here = shop < 0 ? undefined : at(shop);
  const others = shops.open.flatMap((one, index) => {
    const cost = index === shop ? undefined : at(index);
    return cost ? [`${one.shop.id} ${cost}`] : [];
  });
  return [
    here ? `${what} at ${need.from.value}: ${here}, shipping not counted.` : `${need.from.value} has no ${what}.`,
    others.length > 0 ? `Elsewhere: ${others.join(', ')}.` : 'No other shop has it.',
  ];
}
