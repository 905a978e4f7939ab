/** What a change costs, by the same needs and the same rates as an order of it. */
import { expect, it } from 'vitest';
import { priceChange } from '../../server/src/review/price';
import { craftOf } from '../support/craft-of';

const shops = `dryfit: shops
currency: EUR
rates:
  GBP: 1.2
shops:
  pellam:
    currency: EUR
    offers:
      motor-a: [{ price: 20 }, { pack: 4, price: 70 }]
      frame-a: [{ price: 50 }]
  hollow:
    currency: GBP
    offers:
      motor-b: [{ price: 10 }]
`;
const craft = (parts: string) => craftOf(`dryfit: build\nname: A\nparts:\n${parts}`, { shops }).craft;
const motors = (id: string, more = ''): string => `  motors:\n    sold-as: ${id}\n    count: 4\n${more}`;

it('counts what is sold under another name, turns currencies and takes the cheapest packs', () => {
  // A pack of four at 70; four at 10 GBP are 48 EUR.
  expect(priceChange(craft(motors('motor-a')), craft(motors('motor-b')))).toEqual({
    currency: 'EUR',
    before: 70,
    after: 48,
    unknown: [],
  });
});

it('asks no money for what is owned', () => {
  expect(priceChange(craft(motors('motor-a')), craft(motors('motor-a', '    owned: yes\n')))).toMatchObject({
    before: 70,
    after: 0,
  });
});

it('tells whose price is not known, and says nothing where nothing is', () => {
  const frame = '  frame:\n    sold-as: frame-a\n';
  expect(priceChange(craft(motors('motor-a') + frame), craft(motors('motor-x') + frame))?.unknown).toEqual(['motor-x']);
  expect(priceChange(craft(motors('motor-x')), craft(motors('motor-y')))).toBeUndefined();
});
