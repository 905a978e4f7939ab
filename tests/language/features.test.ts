/** The other language features on the samples: references, symbols, highlights, links, folding, selection, lenses, tokens, fit-aware completion. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { codeLenses } from '../../server/src/language/code-lens';
import { complete, resolveItem } from '../../server/src/language/completion';
import { folding, selection } from '../../server/src/language/ranges';
import { highlights, links, references, workspaceSymbols } from '../../server/src/language/references';
import { semanticTokens, tokenTypes } from '../../server/src/language/semantic-tokens';
import { offsetAt } from '../../server/src/text/lines';
import { sampleNames, sampleUri, sampleWorkspace } from '../support/samples';

const workspace = sampleWorkspace();
const files = { get: (uri: string) => workspace.get(uri), spelled: (uri: string) => uri };
const uri = sampleUri('builds/ossel-5.dryfit.yaml');
const file = workspace.get(uri)!;
const { text } = file;

describe('completion that knows what fits', () => {
  const items = complete(workspace, uri, text.indexOf('brunt-2207-1800'));
  it('lists what fits first, and says why the others do not', () => {
    const labels = items.map((item) => item.label);
    expect(labels.slice(0, 2)).toEqual(['brunt-2207-1800', 'brunt-2207-2050']);
    expect(items.find((item) => item.label === 'gannet-2807-1300')?.labelDetails?.description).toMatch(
      /^does not fit: .*19x19/,
    );
    expect(labels.indexOf('gannet-2807-1300')).toBeGreaterThan(1);
  });

  it('says what choosing a part would change, when it is looked at', () => {
    const item = resolveItem(workspace, items.find((one) => one.label === 'brunt-2207-2050')!);
    expect((item.documentation as { value: string }).value).toMatch(
      /With it: ready to fly \d+ g \(−\d+ g\) · thrust to weight [\d.]+ \(\+[\d.]+\) · as you fly it [\d.]+ min \(−[\d.]+ min\)/,
    );
  });

  it('works on a blank use', () => {
    const typing = sampleUri('builds/typing.dryfit.yaml');
    workspace.set(typing, text.replace('use: brunt-2207-1800', 'use: '));
    const list = complete(workspace, typing, workspace.get(typing)!.text.indexOf('use: \n') + 5);
    workspace.delete(typing);
    expect(list.map((item) => item.label).slice(0, 2)).toEqual(['brunt-2207-1800', 'brunt-2207-2050']);
  });
});

describe('names across files', () => {
  it('finds every use of a part', () => {
    const found = references(workspace, files, uri, text.indexOf('brunt-2207-1800') + 1, true);
    expect(new Set(found.map((one) => one.uri.split('/').at(-1)))).toEqual(
      new Set([
        'ossel-5.dryfit.yaml',
        'first-five.dryfit.yaml',
        'motors.dryfit.yaml',
        'bench.dryfit.yaml',
        'hollow-lane.dryfit.yaml',
        'pellam.dryfit.yaml',
        'tarn-works.dryfit.yaml',
      ]),
    );
    for (const one of found) {
      const target = workspace.get(one.uri)!;
      expect(
        target.text.slice(
          offsetAt(target.text, target.lines, one.range.start),
          offsetAt(target.text, target.lines, one.range.end),
        ),
      ).toBe('brunt-2207-1800');
    }
  });

  it('searches parts and builds by name', () => {
    expect(workspaceSymbols(workspace, files, 'heron').map((symbol) => symbol.name)).toEqual(['Heron 7', 'heron-7']);
    expect(workspaceSymbols(workspace, files, '').length).toBeGreaterThan(30);
  });

  it('links each use to its part', () => {
    const found = links(workspace, files, file);
    expect(found.some((link) => link.target?.includes('motors.dryfit.yaml#L'))).toBe(true);
  });

  it('highlights both sides of a finding', () => {
    const faulty = sampleUri('faulty/mixed-stack.dryfit.yaml');
    const analysis = analyse(workspace, faulty)!;
    const spans = highlights(workspace, analysis, analysis.file.text.indexOf('RP-SMA plug') + 1);
    expect(spans.length).toBe(2);
  });
});

describe('shapes', () => {
  it('folds each part without the blank lines behind it', () => {
    const rows = text.split('\n');
    const ranges = folding(file);
    expect(ranges.length).toBeGreaterThan(20);
    for (const range of ranges) expect(rows[range.endLine]!.trim(), `${range.startLine}-${range.endLine}`).not.toBe('');
  });

  it('grows the selection from the value to the file', () => {
    const chain: string[] = [];
    for (
      let at: ReturnType<typeof selection> | undefined = selection(file, text.indexOf('M3x8 button') + 2);
      at;
      at = at.parent
    )
      chain.push(text.slice(offsetAt(text, file.lines, at.range.start), offsetAt(text, file.lines, at.range.end)));
    expect(chain[0]).toBe('M3x8 button');
    expect(chain[1]).toBe('screws: M3x8 button');
    expect(chain.at(-1)).toBe(text);
    for (let i = 1; i < chain.length; i++) expect(chain[i]!.includes(chain[i - 1]!)).toBe(true);
  });

  it('puts the decisive figures above the build and the uses above a part', () => {
    const [lens] = codeLenses(workspace, analyse(workspace, uri)!, (one) => one);
    expect(lens!.command!.title).toMatch(
      /^\d+ g ready to fly {2}· {2}[\d.]+ times its weight {2}· {2}[\d.]+ min as you fly it {2}· {2}nothing to mend$/,
    );
    const library = codeLenses(workspace, analyse(workspace, sampleUri('parts/motors.dryfit.yaml'))!, (one) => one);
    expect(library.map((one) => one.command!.title)).toEqual(
      expect.arrayContaining(['used by 2 files', 'used by 1 file']),
    );
  });

  it.each(sampleNames)('colours %s with tokens in order and inside their lines', (name) => {
    const sample = workspace.get(sampleUri(name))!;
    const { data } = semanticTokens(workspace, sample);
    expect(data.length % 5).toBe(0);
    let [line, character] = [0, 0];
    const rows = sample.text.split('\n');
    for (let i = 0; i < data.length; i += 5) {
      line += data[i]!;
      character = data[i] === 0 ? character + data[i + 1]! : data[i + 1]!;
      expect(character + data[i + 2]!).toBeLessThanOrEqual(rows[line]!.length);
      expect(tokenTypes[data[i + 3]!]).toBeDefined();
    }
    if (name !== 'settings.dryfit.yaml') expect(data.length).toBeGreaterThan(20);
  });
});
