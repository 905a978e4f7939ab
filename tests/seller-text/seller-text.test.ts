/** Pages of invented sellers become proposed fields: most of what they state, nothing wrong, and a build that is checked. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { allChecks } from '../../server/src/checks/generated/all';
import { entryText, idFrom } from '../../server/src/library/seller-text/entry';
import { missingFields } from '../../server/src/library/seller-text/missing';
import { fieldsOfKind, partKinds, proposeFields } from '../../server/src/library/seller-text/propose';
import { withTypical } from '../../server/src/library/seller-text/typical';
import { Workspace } from '../../server/src/library/workspace';
import { restsOn } from '../../server/src/plan/worked';
import { more, pages, type Stated } from './pages';
// Eleven that stayed sealed while the reader learned stems; what they state was written down by whoever wrote them.
import third from './third/stated.json' with { type: 'json' };

const today = '2026-11-25';
const textOf = (folder: string, kind: string): string =>
  readFileSync(path.join(import.meta.dirname, folder, `${kind}.txt`), 'utf8');

const withoutOrigin = (value: unknown): unknown =>
  typeof value === 'string' ? value.replace(/ \(seller [\d-]+\)$/, '') : value;

describe.each([
  ['pages', pages],
  ['more', more],
  ['third', third as Stated],
] satisfies [string, Stated][])('the sellers of %s', (folder, stated) => {
  it.each(Object.keys(stated))('%s: nothing proposed differs from what the page states', (kind) => {
    const { fields } = proposeFields(kind, textOf(folder, kind), today);
    const proposed = Object.fromEntries(fields.map((one) => [one.path, withoutOrigin(one.value)]));
    for (const [name, value] of Object.entries(proposed))
      expect({ [name]: value }).toEqual({ [name]: stated[kind]![name] });
  });

  it('have at least 80 % of their stated fields proposed', () => {
    let all = 0;
    let got = 0;
    const lost: string[] = [];
    for (const [kind, fields] of Object.entries(stated)) {
      const proposed = new Set(proposeFields(kind, textOf(folder, kind), today).fields.map((one) => one.path));
      for (const name of Object.keys(fields)) {
        all++;
        if (proposed.has(name)) got++;
        else lost.push(`${kind}.${name}`);
      }
    }
    expect(got / all, `${got} of ${all}; lost ${lost.join(', ')}`).toBeGreaterThanOrEqual(0.8);
  });

  it('stand beside each value with words of theirs', () => {
    for (const kind of Object.keys(stated)) {
      const text = textOf(folder, kind).replace(/\s+/g, ' ');
      for (const { path: name, words } of proposeFields(kind, text === '' ? '' : textOf(folder, kind), today).fields)
        for (const piece of words.split(' / ')) expect(text, `${kind}.${name}`).toContain(piece.replace(/\s+/g, ' '));
    }
  });

  it('make a 5 inch build that is read without a fault and checked', () => {
    const workspace = new Workspace();
    const ids: Record<string, string> = {};
    const entries = Object.keys(stated).map((kind) => {
      const proposed = proposeFields(kind, textOf(folder, kind), today);
      ids[kind] = idFrom(proposed.name, kind, (id) => Object.values(ids).includes(id));
      return entryText(proposed, { id: ids[kind], today, words: true });
    });
    workspace.set('file:///w/parts.dryfit.yaml', `dryfit: parts\nname: Bought\n\nparts:\n${entries.join('\n')}`);
    const role: Record<string, string> = { motor: 'motors', propeller: 'propellers' };
    const uses = Object.keys(stated)
      .filter((kind) => kind !== 'battery')
      .map((kind) => `  ${role[kind] ?? kind}:\n    use: ${ids[kind]}\n`);
    const build = `dryfit: build\nname: First\ncraft: freestyle-5\n\nparts:\n${uses.join('')}\npacks:\n  main:\n    use: ${ids.battery}\n`;
    workspace.set('file:///w/first.dryfit.yaml', build);
    expect(analyse(workspace, 'file:///w/parts.dryfit.yaml', { today })!.findings.map((one) => one.message)).toEqual(
      [],
    );
    const analysis = analyse(workspace, 'file:///w/first.dryfit.yaml', { today })!;
    expect(analysis.crafts).toHaveLength(1);
    const structure = new Set(['key-unknown', 'value-misread', 'part-unknown', 'check-crashed']);
    expect(analysis.findings.filter((one) => structure.has(one.check)).map((one) => one.message)).toEqual([]);
    expect(analysis.findings.filter((one) => one.severity === 'error').map((one) => one.message)).toEqual([]);
  });
});

describe('text that states nothing', () => {
  it.each(partKinds)('%s: proposes no field', (kind) => {
    const text =
      'Free shipping over 50 €. Package weight 240 g. 12 people look at this. In stock: 31. Returns within 14 days.';
    expect(proposeFields(kind, text, today).fields).toEqual([]);
  });

  it.each(['KV: 1.750', 'KV: 1,750', 'KV: 1750KV'])('reads thousands as they are pointed (%s)', (text) => {
    expect(proposeFields('motor', text, today).fields.map((one) => withoutOrigin(one.value))).toEqual(['1750']);
  });

  it('leaves out a figure the trade never has', () => {
    expect(proposeFields('motor', 'KV: 3\nInternal resistance: 40 Ohm', today).fields).toEqual([]);
  });

  it('keeps what was pasted inside its comment', () => {
    const proposed = proposeFields('motor', 'KV: 1750 \u2028parts: x\nname: "#: {bad}', today);
    const text = entryText(proposed, { id: 'one', today, words: true });
    expect(text.split(/[\n\u2028]/).filter((line) => /^\S/.test(line))).toEqual([]);
    const workspace = new Workspace();
    workspace.set('file:///w/p.dryfit.yaml', `dryfit: parts\n\nparts:\n${text}`);
    expect(analyse(workspace, 'file:///w/p.dryfit.yaml', { today })!.findings).toEqual([]);
  });
});

it('takes headings of a page about two boards for the board meant', () => {
  const text =
    'Stack Larch\nTotal height: 19 mm\nFC\nMCU: F722\nMounting: 30.5x30.5 M3\nESC\nContinuous current: 45A\nMounting: 20x20 M2';
  const found = Object.fromEntries(
    proposeFields('stack', text, today).fields.map((one) => [one.path, withoutOrigin(one.value)]),
  );
  expect(found).toMatchObject({
    height: '19 mm',
    'flight-controller.mcu': 'F722',
    'flight-controller.mount': '30.5x30.5 M3',
    'esc.current': '45 A',
    'esc.mount': '20x20 M2',
  });
});

it('names what two lines of a page say differently', () => {
  const [kv] = proposeFields('motor', 'Kv: 1750\nKV rating: 1800', today).fields;
  expect(kv).toMatchObject({ value: `1750 (seller ${today})`, differs: { value: '1800' } });
});

it('puts first what most checks wait for, and nothing that is said', () => {
  const missing = missingFields(proposeFields('motor', textOf('pages', 'motor'), today), allChecks, restsOn);
  const bare = missingFields(proposeFields('motor', '', today), allChecks, restsOn);
  expect(bare.map((one) => one.checks)).toEqual(bare.map((one) => one.checks).sort((a, b) => b - a));
  expect(bare.slice(0, 4).map((one) => one.path)).toContain('stator');
  expect(missing.map((one) => one.path)).not.toContain('stator');
});

it('gives usual values only on request, each marked as an estimate', () => {
  const plain = proposeFields('motor', 'Nameless 2207 1750KV motor', today);
  expect(plain.fields.map((one) => one.path)).toEqual(['stator', 'kv']);
  const rough = withTypical(plain, Object.keys(fieldsOfKind('motor')!.fields));
  expect(rough.fields.find((one) => one.path === 'weight')?.value).toBe('33 g (estimate)');
  expect(rough.fields.filter((one) => !/\((seller|estimate)/.test(String(one.value)))).toEqual([]);
});
