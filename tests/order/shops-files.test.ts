/** Shops files with mistakes: each is found at its place, in words, and an order goes on without it. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { unmark } from '../support/marked';

const uri = 'file:///club/shops.dryfit.yaml';

function found(marked: string, build = ''): { check: string; text: string }[] {
  const { text } = unmark(marked);
  const workspace = new Workspace();
  workspace.set(uri, text);
  workspace.set('file:///club/parts.dryfit.yaml', 'dryfit: parts\nparts:\n  brunt:\n    kind: motor\n');
  if (build) workspace.set('file:///club/build.dryfit.yaml', build);
  return analyse(workspace, uri)!.findings.map(({ check, at }) => ({
    check,
    text: text.slice(at.span.start, at.span.end),
  }));
}

const file = (shop: string, head = ''): string =>
  `dryfit: shops\n${head}shops:\n  pellam:\n    flat: 5\n${shop.replace(/^/gm, '    ')}\n`;

describe('a shops file', () => {
  it.each([
    ['currency: GBP', 'currency: EUR\n', 'shop-rate-missing', 'GBP'],
    ['shipping:\n  - cost: 5\n  - up-to: 1 kg\n    cost: 4', '', 'shop-tier-unreached', '1 kg'],
    ['shipping:\n  - up-to: 2 kg\n    cost: 5\n  - up-to: 1 kg\n    cost: 4', '', 'shop-tier-unreached', '1 kg'],
    ['free-over: -10', '', 'shop-amount-impossible', '-10'],
    ['offers:\n  brunt:\n    - price: -3', '', 'shop-amount-impossible', '-3'],
    ['offers:\n  brunt:\n    - price: 3\n      pack: 0', '', 'shop-amount-impossible', '0'],
    ['offers:\n  brnut:\n    - price: 3', '', 'offer-part-unknown', 'brnut'],
    ['currency: GBP', 'rates:\n  GBP: 1.15\n', 'shop-rates-undated', 'rates'],
    ['offers:\n  brunt:\n    - price: 3,50', '', 'value-misread', '3,50'],
    ['offers:\n  brunt:\n    - pack: 4', '', 'key-missing', 'offers'],
    ['flot: 3', '', 'key-unknown', 'flot'],
  ])('%s', (shop, head, check, text) => {
    const all = found(file(shop, head));
    expect(all.map((one) => one.check)).toContain(check);
    if (check !== 'key-missing') expect(all.find((one) => one.check === check)?.text).toBe(text);
  });

  it('is content with what an order can follow', () => {
    expect(found(file('offers:\n  brunt:\n    - price: 3'))).toEqual([]);
    expect(
      found(
        file('offers:\n  lead:\n    - price: 3'),
        'dryfit: build\nname: A\nparts:\n  battery-lead:\n    sold-as: lead\n',
      ),
    ).toEqual([]);
  });
});
