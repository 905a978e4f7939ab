/** Draws orders with every kind of rule a shop may have. Repeatable; solves nothing. */
import type { Border, OrderOffer, OrderProblem, OrderShop } from '../../server/src/plan/order-model';
import { type Chance, seeded } from '../support/seeded';

export const noBorder: Border = { duty: 0, tax: 0, handling: 0, perLine: 0 };

export interface Size {
  readonly lines: number;
  readonly shops: number;
}

const often = (chance: Chance, percent: number): boolean => chance.below(100) < percent;

export function drawnOrder(seed: number, { lines: count, shops: many }: Size): OrderProblem {
  const chance = seeded(seed);
  const shops = Array.from({ length: many }, (_, i) => shopOf(chance, i));
  const lines = Array.from({ length: count }, (_, i) => ({
    part: `part-${i}`,
    need: chance.pick([1, 1, 1, 2, 4, 5, 6]),
    mass: chance.pick([30, 90, 200, 330, 1200, 2100]),
    battery: often(chance, 15),
    whole: !often(chance, 20),
  }));
  const offers: OrderOffer[] = [];
  for (const [line, { battery, mass }] of lines.entries()) {
    const usual = 150 + chance.below(6000) + mass;
    for (let shop = 0; shop < many; shop++) {
      if (!often(chance, many === 1 ? 95 : 75)) continue;
      const price = Math.round(usual * (0.8 + chance.below(41) / 100)) + (battery ? 500 : 0);
      const stock = often(chance, 25) ? chance.below(6) : undefined;
      offers.push({ line, shop, pack: often(chance, 15) ? chance.pick([2, 4]) : 1, price, stock });
      if (often(chance, 12)) offers.push({ line, shop, pack: 4, price: Math.round(price * 3.6), stock: undefined });
    }
  }
  return { lines, shops, offers, ...(often(chance, 20) ? { shopsAtMost: 1 + chance.below(many) } : {}) };
}

function shopOf(chance: Chance, i: number): OrderShop {
  const tiers = [
    { upTo: 2500, cost: 390 },
    { upTo: 5000, cost: 690 },
    { upTo: 20000, cost: 990 },
    { upTo: often(chance, 50) ? undefined : 60000, cost: 1490 },
  ];
  const way = chance.below(4);
  return {
    id: `shop-${i}`,
    flat: way === 0 || way === 3 ? chance.pick([0, 490, 690, 1190, 3400]) : 0,
    tiers: way === 1 || way === 3 ? tiers.slice(chance.below(3)) : [],
    perPiece: often(chance, 20) ? chance.pick([25, 50]) : 0,
    perLine: way === 2 || often(chance, 15) ? chance.pick([90, 250]) : 0,
    freeOver: often(chance, 40) ? chance.pick([3000, 7500, 15000, 25000]) : undefined,
    minimum: often(chance, 25) ? chance.pick([1500, 2500, 4000]) : 0,
    sendsBatteries: !often(chance, 15),
    batteriesApart: often(chance, 25),
    batterySurcharge: often(chance, 25) ? chance.pick([300, 500]) : 0,
    border: often(chance, 30)
      ? {
          duty: chance.pick([0, 270, 470]),
          tax: chance.pick([0, 1900, 2000, 810]),
          handling: chance.pick([0, 500, 800]),
          perLine: chance.pick([0, 300]),
        }
      : noBorder,
  };
}
