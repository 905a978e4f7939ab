/** The server as editors see it: a spawned process, the real protocol, files on a real disk. Needs `npm run build`. */
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CodeAction, CompletionItem, DocumentSymbol, Hover, LocationLink } from 'vscode-languageserver-protocol';
import { samplesFolder, sampleText } from '../support/samples';
import { type SpawnedServer, startServer } from '../support/spawned-server';

let folder: string;
let server: SpawnedServer;
const uriOf = (name: string): string => pathToFileURL(path.join(folder, name)).href;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'dryfit server '));
  cpSync(samplesFolder, folder, { recursive: true });
  server = await startServer([pathToFileURL(folder).href]);
});

afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

const codes = (list: readonly { code?: unknown }[]): unknown[] => list.map((one) => one.code);
const at = (text: string, word: string, into = 1): { line: number; character: number } => {
  const offset = text.indexOf(word) + into;
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)!.length };
};

describe('findings', () => {
  it('says what it can do', () => {
    expect(server.initialized.capabilities.hoverProvider).toBe(true);
    expect(server.initialized.capabilities.textDocumentSync).toMatchObject({ change: 2 });
  });

  it('shows a mistake with both sides', async () => {
    const uri = uriOf('faulty/first-five.dryfit.yaml');
    const text = sampleText('faulty/first-five.dryfit.yaml');
    server.open(uri, text);
    const list = await server.diagnostics(uri, (found) => codes(found).includes('battery-plug-differs'));
    const plug = list.find((one) => one.code === 'battery-plug-differs')!;
    expect(plug.range.start).toEqual(at(text, 'XT30', 0));
    expect(plug.relatedInformation?.[0]?.location.uri).toBe(uriOf('parts/packs.dryfit.yaml'));
    expect(plug.source).toBe('dryfit');
  });

  it('follows edits of a few characters, in order', async () => {
    const uri = uriOf('faulty/first-five.dryfit.yaml');
    const start = at(sampleText('faulty/first-five.dryfit.yaml'), 'XT30', 0);
    server.change(uri, 2, [
      {
        range: {
          start: { ...start, character: start.character + 2 },
          end: { ...start, character: start.character + 3 },
        },
        text: '6',
      },
    ]);
    const list = await server.diagnostics(uri, (_, version) => version === 2);
    expect(codes(list)).not.toContain('battery-plug-differs');
    server.change(uri, 3, [
      {
        range: {
          start: { ...start, character: start.character + 2 },
          end: { ...start, character: start.character + 3 },
        },
        text: '3',
      },
    ]);
    expect(codes(await server.diagnostics(uri, (_, version) => version === 3))).toContain('battery-plug-differs');
  });

  it('lives on when settings change and the client knows no refreshing', async () => {
    await server.connection.sendNotification('workspace/didChangeConfiguration', {
      settings: { dryfit: { show: { ports: false } } },
    });
    const uri = uriOf('bench.dryfit.yaml');
    expect(
      await server.connection.sendRequest('textDocument/documentSymbol', { textDocument: { uri } }),
    ).not.toHaveLength(0);
    expect(server.process.exitCode).toBeNull();
  });

  it('shows findings for files that nobody has opened', async () => {
    const list = await server.diagnostics(uriOf('faulty/mixed-stack.dryfit.yaml'), (found) => found.length > 5);
    expect(codes(list)).toContain('esc-cells-exceeded');
  });

  it('answers in the spelling the client uses', async () => {
    const odd =
      `${uriOf('builds/')}`.replace('file:///', 'file:///').replace(/dryfit%20server/, 'dryfit%20server') +
      encodeURIComponent('spelt (oddly).dryfit.yaml');
    server.open(
      odd.replace('(', '%28').replace(')', '%29'),
      'dryfit: build\nname: A\nparts:\n  strap:\n    weight: 6\n',
    );
    const list = await server.diagnostics(odd.replace('(', '%28').replace(')', '%29'), (found) => found.length > 0);
    expect(codes(list)).toContain('value-misread');
  });

  it('looks at open builds again when a parts file changes, in the editor and on disk', async () => {
    const build = uriOf('builds/ossel-5.dryfit.yaml');
    const parts = uriOf('parts/motors.dryfit.yaml');
    server.open(build, sampleText('builds/ossel-5.dryfit.yaml'));
    await server.diagnostics(build, (found) => !codes(found).includes('part-unknown'));
    const renamed = sampleText('parts/motors.dryfit.yaml').replaceAll('brunt-2207-1800', 'brunt-2207-1801');
    server.open(parts, renamed);
    await server.diagnostics(build, (found) => codes(found).includes('part-unknown'));
    await server.connection.sendNotification('textDocument/didClose', { textDocument: { uri: parts } });
    await server.diagnostics(build, (found) => !codes(found).includes('part-unknown'));
    writeFileSync(path.join(folder, 'parts/motors.dryfit.yaml'), renamed);
    await server.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri: parts, type: 2 }] });
    await server.diagnostics(build, (found) => codes(found).includes('part-unknown'));
    writeFileSync(path.join(folder, 'parts/motors.dryfit.yaml'), sampleText('parts/motors.dryfit.yaml'));
    await server.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri: parts, type: 2 }] });
    await server.diagnostics(build, (found) => !codes(found).includes('part-unknown'));
  });
});

describe('references', () => {
  it('looks at open builds again when a reference changes', async () => {
    const build = uriOf('builds/odd.dryfit.yaml');
    const reference = uriOf('references/corrie-5.dryfit.yaml');
    const text = sampleText('references/corrie-5.dryfit.yaml');
    const outside = (found: readonly { code?: unknown; message: unknown }[]): boolean =>
      found.some(({ code, message }) => code === 'outside-references' && String(message).includes('1300'));
    server.open(
      build,
      'dryfit: build\nname: Odd\ncraft: freestyle-5\nparts:\n  motors:\n    kv: 1300\npacks:\n  main:\n    cells: 6S\n',
    );
    await server.diagnostics(build, outside);
    server.open(reference, text.replace('kv: 1800', 'kv: 1300'));
    await server.diagnostics(build, (found) => !outside(found));
    await server.connection.sendNotification('textDocument/didClose', { textDocument: { uri: reference } });
    await server.diagnostics(build, outside);
  });
});

describe('help', () => {
  const build = () => uriOf('builds/ossel-5.dryfit.yaml');
  const text = sampleText('builds/ossel-5.dryfit.yaml');
  const ask = <T>(method: string, position: object): Promise<T> =>
    server.connection.sendRequest<T>(method, { textDocument: { uri: build() }, position });

  it('hovers the decisive figures on the name, with weight, current and flight time', async () => {
    const hover = await ask<Hover>('textDocument/hover', at(text, 'Ossel 5'));
    const { value } = hover.contents as { value: string };
    expect(value).toMatch(/ready to fly \*\*\d+ g\*\* \(\d+ to \d+\)/);
    expect(value).toMatch(/current while hovering \*\*[\d.]+ A\*\* \([\d.]+ to [\d.]+\)/);
    expect(value).toMatch(/as you fly it \*\*[\d.]+ min\*\* \([\d.]+ to [\d.]+\)/);
  });

  it('hovers the figures that a part decides', async () => {
    const { value } = (await ask<Hover>('textDocument/hover', at(text, 'brunt-2207'))).contents as { value: string };
    expect(value).toContain('thrust to weight');
    expect(value).toMatch(/weight: \*\*130 g\*\* \(4 of 32\.4 g\)/);
  });

  it('completes part ids of the right kind', async () => {
    const items = await ask<CompletionItem[]>('textDocument/completion', at(text, 'brunt-2207', 0));
    const labels = items.map((item) => item.label);
    expect(labels).toContain('gannet-2807-1300');
    expect(labels).not.toContain('whirl-51363');
  });

  it('completes trade terms with their explanations', async () => {
    const items = await ask<CompletionItem[]>('textDocument/completion', at(text, 'XT60', 0));
    const xt60 = items.find((item) => item.label === 'XT60');
    expect(xt60?.labelDetails?.description).toContain('5 inch standard');
  });

  it('goes to the definition of a part', async () => {
    const [link] = await ask<LocationLink[]>('textDocument/definition', at(text, 'brunt-2207'));
    expect(link?.targetUri).toBe(uriOf('parts/motors.dryfit.yaml'));
  });

  it('outlines the file', async () => {
    const symbols = await server.connection.sendRequest<DocumentSymbol[]>('textDocument/documentSymbol', {
      textDocument: { uri: build() },
    });
    expect(symbols.map((symbol) => symbol.name)).toEqual([
      'dryfit',
      'name',
      'craft',
      'parts',
      'packs',
      'wiring',
      'setup',
      'flight',
      'goals',
      'budget',
    ]);
    expect(symbols[3]?.children?.map((symbol) => symbol.name)).toContain('motors');
  });

  it('offers a fix that mends a misspelt part id', async () => {
    const uri = uriOf('faulty/first-five.dryfit.yaml');
    const range = {
      start: at(sampleText('faulty/first-five.dryfit.yaml'), 'quil-f7', 0),
      end: at(sampleText('faulty/first-five.dryfit.yaml'), 'quil-f7', 4),
    };
    const fixes = await server.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri },
      range,
      context: { diagnostics: [] },
    });
    expect(fixes.map((fix) => fix.title)).toEqual(['Use `quill-f7-55a`']);
    expect(fixes[0]?.edit?.changes?.[uri]?.[0]?.newText).toBe('quill-f7-55a');
  });
});
