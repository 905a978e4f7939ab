/** What a hover says of the world around a build: where its values lie among the references, what its order costs. Counted by hand from the samples and from small shops. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { hover } from '../../server/src/language/hover';
import { Workspace } from '../../server/src/library/workspace';
import { sampleText, sampleUri, sampleWorkspace } from '../support/samples';

/** The hover at the mark `|`, which is taken out. */
function hoverIn(workspace: Workspace, uri: string, marked: string): string {
  const at = marked.indexOf('|');
  workspace.set(uri, marked.replace('|', ''));
  return hover(workspace, analyse(workspace, uri)!, at)?.markdown ?? '';
}

describe('among the references of its class', () => {
  const hoverOf = (name: string, from: string, to: string): string =>
    hoverIn(sampleWorkspace(), sampleUri(name), sampleText(name).replace(from, to));
  const ossel = 'builds/ossel-5.dryfit.yaml';

  it('a value of the build says where it lies', () => {
    expect(hoverOf(ossel, 'plug: XT60', 'plug: XT|60')).toContain('5 of 5 references have XT60.');
    expect(hoverOf(ossel, 'plug: XT60', 'plug: XT|30')).toContain('None of 5 references has XT30; they have XT60 (5).');
    expect(hoverOf(ossel, '    screws: M3x8 button', '    kv: 13|00\n    screws: M3x8 button')).toContain(
      '5 references on 6S: 1750 to 1850 Kv, median 1800 Kv; 1300 Kv is below all of them.',
    );
  });

  it('a part says it of what it brings from the parts file, under the name of each value', () => {
    const shown = hoverOf(ossel, 'use: brunt', 'use: |brunt');
    expect(shown).toContain('- motor speed: 5 references on 6S: 1750 to 1850 Kv, median 1800 Kv; 1800 Kv is inside.');
    expect(hoverOf(ossel, '  stack:', '  st|ack:')).toContain('- ESC current: 5 references: 45 to 60 A');
  });

  it('is silent on a value that nobody compares, and in a class without references', () => {
    expect(hoverOf(ossel, 'length: 100 mm', 'length: 10|0 mm')).not.toContain('reference');
    expect(hoverOf('builds/heron-7.dryfit.yaml', 'use: heron-7', 'use: |heron-7')).not.toContain('references');
  });
});

describe('what an order costs, as far as it is certain', () => {
  const shops = `dryfit: shops
shops:
  pellam:
    currency: EUR
    flat: 5
    offers:
      motor-a: [{ price: 20 }]
      frame-a: [{ price: 41.50 }]
  tarn:
    currency: EUR
    flat: 4
    offers:
      motor-a: [{ pack: 4, price: 70 }]
`;
  const build = (budget: string, frame: string, motors: string): string =>
    `dryfit: build\nname: A\nparts:\n  frame:\n    sold-as: frame-a\n${frame}  motors:\n    count: 4\n    sold-as: motor-a\n${motors}${budget}`;
  const hoverOf = (text: string): string => {
    const workspace = new Workspace();
    workspace.set('file:///club/shops.dryfit.yaml', shops);
    return hoverIn(workspace, 'file:///club/a.dryfit.yaml', text);
  };

  it('the budget tells the least the goods cost, and how to have the exact sum', () => {
    const shown = hoverOf(build('bud|get: 200 EUR\n', '', ''));
    // 41.50 and a pack of four at 70.
    expect(shown).toContain('The goods cost at least 111.50 EUR');
    expect(shown).toContain('With a shop behind `from:` at every part');
    expect(shown).toContain('`dryfit order`');
  });

  it('the budget tells what the order costs that the build itself says', () => {
    const shown = hoverOf(build('budget: 20|0 EUR\n', '    from: pellam\n', '    from: tarn\n'));
    // Two parcels: 5 and 4.
    expect(shown).toContain(
      'As the build says it with `from`: 120.50 EUR, of which shipping, duty and tax are 9.00 EUR.',
    );
  });

  it('a `from` tells what its line costs there and elsewhere', () => {
    const shown = hoverOf(build('', '', '    from: pel|lam\n'));
    expect(shown).toContain('4 x motor-a at pellam: 80.00 EUR, shipping not counted.');
    expect(shown).toContain('Elsewhere: tarn 70.00 EUR.');
    expect(hoverOf(build('', '    from: ta|rn\n', ''))).toContain('tarn has no 1 x frame-a.');
  });

  it('says nothing where there are no shops', () => {
    const workspace = new Workspace();
    expect(hoverIn(workspace, 'file:///club/a.dryfit.yaml', build('bud|get: 200 EUR\n', '', ''))).not.toContain(
      'goods',
    );
  });
});
