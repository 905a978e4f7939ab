/** Random edits in builds and parts files, one after another: what is found afterwards is what a fresh start finds. */
import { expect, it } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Analysis, analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { sampleNames, sampleUri, sampleWorkspace } from '../support/samples';
import { type Chance, seeded } from '../support/seeded';

const seed = Number(process.env.DRYFIT_SEED ?? 501);
const words = [
  '\n',
  '  ',
  'use: brunt-2207-1800',
  'kv: 1800',
  ': ',
  '#',
  '- ',
  '"',
  '6S',
  'XT60',
  'count: 4\n',
  'packs:\n',
  '\r\n',
  '{',
  '}',
  '&a ',
  '*a',
  '---\n',
];

function edit(document: TextDocument, version: number, chance: Chance): TextDocument {
  const text = document.getText();
  const start = chance.below(text.length + 1);
  const end = Math.min(text.length, start + (chance.below(3) === 0 ? chance.below(20) : 0));
  return TextDocument.update(
    document,
    [
      {
        range: { start: document.positionAt(start), end: document.positionAt(end) },
        text: chance.below(4) === 0 ? '' : chance.pick(words),
      },
    ],
    version,
  );
}

it('500 sequences', { timeout: 300_000 }, () => {
  const chance = seeded(seed);
  const touched = sampleNames.filter(
    (name) => name.startsWith('builds/') || name.startsWith('parts/m') || name === 'bench.dryfit.yaml',
  );
  const watched = sampleUri('builds/ossel-5.dryfit.yaml');
  let found = 0;
  for (let sequence = 0; sequence < 500; sequence++) {
    const workspace = sampleWorkspace();
    const documents = new Map<string, TextDocument>();
    const last = new Map<string, Analysis>();
    const look = (uri: string): Analysis => {
      const before = last.get(uri);
      const analysis = analyse(workspace, uri, before ? { before } : {})!;
      last.set(uri, analysis);
      return analysis;
    };
    for (let step = 0; step < 6; step++) {
      const uri = sampleUri(chance.pick(touched));
      const document = edit(
        documents.get(uri) ?? TextDocument.create(uri, 'dryfit', 0, workspace.get(uri)!.text),
        step + 1,
        chance,
      );
      documents.set(uri, document);
      workspace.set(uri, document.getText());
      // Looked at between edits, so that whatever is remembered could go stale.
      for (const one of new Set([watched, uri])) look(one);
    }
    const fresh = new Workspace();
    // Files that nobody edited have been read once, and once is enough.
    for (const uri of workspace.uris())
      if (documents.has(uri)) fresh.set(uri, workspace.get(uri)!.text);
      else fresh.take(workspace.get(uri)!);
    for (const uri of [watched, ...documents.keys()]) {
      const [kept, anew] = [look(uri), analyse(fresh, uri)!];
      expect(JSON.stringify(kept.findings), `seed ${seed}, sequence ${sequence}, ${uri}`).toBe(
        JSON.stringify(anew.findings),
      );
      expect(kept.notChecked).toEqual(anew.notChecked);
      found += kept.findings.length;
    }
  }
  expect(found).toBeGreaterThan(1000);
});
