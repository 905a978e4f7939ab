/** What is offered instead of a part that is sold out: the cheapest that breaks no check which held, and nothing rather than one that does. */
import { expect, it } from 'vitest';
import { craftsOf } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { alternativeFor } from '../../server/src/report/order-alternatives';

const uri = 'file:///club/craft.dryfit.yaml';

/** Motors for 6S, sold out; others by id with the cells they stand and a price. */
function instead(offers: Readonly<Record<string, readonly [cells: string, price: number]>>) {
  const workspace = new Workspace();
  const part = (id: string, cells: string): string => `  ${id}:\n    kind: motor\n    cells: ${cells}\n`;
  workspace.set(
    'file:///club/parts.dryfit.yaml',
    `dryfit: parts\nparts:\n${part('wanted', '6S')}${Object.entries(offers)
      .map(([id, [cells]]) => part(id, cells))
      .join('')}`,
  );
  workspace.set(
    'file:///club/shops.dryfit.yaml',
    `dryfit: shops\nshops:\n  pellam:\n    currency: EUR\n    offers:\n      wanted: [{ price: 15, stock: 0 }]\n${Object.entries(
      offers,
    )
      .map(([id, [, price]]) => `      ${id}: [{ price: ${price} }]\n`)
      .join('')}`,
  );
  workspace.set(
    uri,
    'dryfit: build\nname: A\nparts:\n  motors:\n    use: wanted\n    count: 4\npacks:\n  main:\n    cells: 6S\n',
  );
  return alternativeFor(workspace, craftsOf(workspace, workspace.get(uri)!)[0]!, 'wanted');
}

it('passes over the cheaper one that the pack would burn', () => {
  expect(instead({ weak: ['4S', 9], strong: ['4S-6S', 17] })).toEqual({ part: 'strong', shop: 'pellam', cost: 6800 });
});

it('takes the cheaper one where both hold', () => {
  expect(instead({ strong: ['4S-6S', 17], plain: ['6S', 16.5] })).toEqual({
    part: 'plain',
    shop: 'pellam',
    cost: 6600,
  });
});

it('offers nothing when everything else breaks a check', () => {
  expect(instead({ weak: ['4S', 9], weaker: ['3S', 5] })).toBeUndefined();
});
