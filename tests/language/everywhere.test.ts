/** Hover, completion and definition at every offset of every sample: they answer or stay silent, but never throw. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { complete } from '../../server/src/language/completion';
import { definition } from '../../server/src/language/definition';
import { hover } from '../../server/src/language/hover';
import { symbols } from '../../server/src/language/symbols';
import { sampleNames, sampleUri, sampleWorkspace } from '../support/samples';

const workspace = sampleWorkspace();
const files = { get: (uri: string) => workspace.get(uri), spelled: (uri: string) => uri };

describe.each(sampleNames)('%s', (name) => {
  it('answers at every offset', { timeout: 60_000 }, () => {
    const uri = sampleUri(name);
    const { text } = workspace.get(uri)!;
    const analysis = analyse(workspace, uri)!;
    let hovers = 0;
    let offers = 0;
    for (let offset = 0; offset <= text.length; offset++) {
      const shown = hover(workspace, analysis, offset);
      if (shown) {
        hovers++;
        expect(shown.span.start).toBeLessThanOrEqual(shown.span.end);
        expect(shown.markdown).not.toMatch(/undefined|NaN|\[object/);
      }
      const items = complete(workspace, uri, offset);
      if (items.length > 0) offers++;
      expect(items.length).toBeLessThanOrEqual(200);
      definition(workspace, files, uri, offset);
    }
    expect(hovers).toBeGreaterThan(text.length / 4);
    expect(offers).toBeGreaterThan(text.length / 4);
    expect(symbols(workspace.get(uri)!).length).toBeGreaterThan(1);
  });
});
