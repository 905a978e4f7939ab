/** The plans that an editor shows, asked of the real server: the same text as the command line's Markdown, and gates ticked in the file. Needs `npm run build`. */
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CancellationTokenSource } from 'vscode-jsonrpc';
import type { CodeAction, TextEdit } from 'vscode-languageserver-protocol';
import { samplesFolder, sampleText } from '../support/samples';
import { type SpawnedServer, startServer } from '../support/spawned-server';

interface Plan {
  readonly title: string;
  readonly markdown: string;
}

const cli = path.resolve(import.meta.dirname, '../../dist/cli.cjs');
const ossel = 'builds/ossel-5.dryfit.yaml';
const pip = 'builds/pip-75.dryfit.yaml';
let folder: string;
let server: SpawnedServer;
const uriOf = (name: string): string => pathToFileURL(path.join(folder, name)).href;
const ask = <T>(method: string, params: object): Promise<T> => server.connection.sendRequest<T>(method, params);
const told = (...args: readonly string[]): string => {
  const { stdout } = spawnSync(process.execPath, [cli, ...args, '--format', 'markdown'], {
    cwd: folder,
    encoding: 'utf8',
  });
  return stdout;
};

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'dryfit plans '));
  cpSync(samplesFolder, folder, { recursive: true });
  server = await startServer([pathToFileURL(folder).href]);
  // Answered once the folders are read.
  await server.diagnostics(uriOf('faulty/mixed-stack.dryfit.yaml'), (found) => found.length > 5);
});

afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

describe('the same text as on the command line', () => {
  it('assembly', async () => {
    const plan = await ask<Plan>('dryfit/assembly', { uri: uriOf(ossel) });
    expect(plan.title).toBe('Ossel 5 assembly');
    expect(plan.markdown).toBe(told('assemble', ossel));
  });

  it('takes what is asked by position as well as by name', async () => {
    const { connection } = server;
    const byPosition = await connection.sendRequest<Plan>('dryfit/setup', { uri: uriOf(pip) }, null);
    expect(byPosition).toEqual(await ask<Plan>('dryfit/setup', { uri: uriOf(pip) }));
  });

  it('set-up', async () => {
    const plan = await ask<Plan>('dryfit/setup', { uri: uriOf(pip) });
    expect(plan.title).toBe('Pip 75 set-up');
    expect(plan.markdown).toBe(told('setup', pip));
  });

  it('consensus, with the classes to choose from', async () => {
    const plan = await ask<Plan>('dryfit/consensus', { craftClass: 'freestyle-5' });
    expect(plan.title).toBe('freestyle-5 consensus');
    expect(plan.markdown).toBe(told('consensus', 'freestyle-5'));
    const classes = await ask<{ name: string; references: number; own: boolean }[]>('dryfit/classes', {
      uri: uriOf(pip),
    });
    expect(classes.slice(0, 2)).toMatchObject([
      { name: 'whoop-75', references: 5, own: true },
      { name: 'freestyle-5', references: 5, own: false },
    ]);
  });

  it('order, of one build and of two together', { timeout: 30_000 }, async () => {
    const one = await ask<Plan>('dryfit/order', { uris: [uriOf(ossel)] });
    expect(one.title).toBe('Ossel 5 order');
    expect(one.markdown).toBe(told('order', ossel));
    expect(one.markdown).toContain('proved');
    const both = await ask<Plan>('dryfit/order', { uris: [uriOf(ossel), uriOf(pip)] });
    expect(both.title).toBe('Ossel 5 and Pip 75 order');
    expect(both.markdown).toBe(told('order', ossel, pip));
  });

  it('of what is in the editor, saved or not', async () => {
    const text = sampleText(pip).replace('name: Pip 75', 'name: Pip not saved');
    server.open(uriOf(pip), text);
    expect((await ask<Plan>('dryfit/setup', { uri: uriOf(pip) })).title).toBe('Pip not saved set-up');
    await server.connection.sendNotification('textDocument/didClose', { textDocument: { uri: uriOf(pip) } });
  });
});

describe('an order that takes long', () => {
  it('lets the server answer meanwhile, and can be given up', { timeout: 30_000 }, async () => {
    const source = new CancellationTokenSource();
    const order = server.connection.sendRequest<Plan>(
      'dryfit/order',
      { uris: [uriOf(ossel), uriOf('builds/heron-7.dryfit.yaml'), uriOf('builds/dart-5.dryfit.yaml')] },
      source.token,
    );
    const ended = order.then(
      () => 'answered',
      (error: { code?: number }) => error.code,
    );
    const meanwhile = ask<Plan>('dryfit/setup', { uri: uriOf(ossel) }).then(() => 'meanwhile');
    expect(await Promise.race([ended, meanwhile])).toBe('meanwhile');
    source.cancel();
    expect(await ended).toBe(-32800);
  });

  it('is no order without shops, and says the way out', async () => {
    const bare = await startServer();
    const uri = 'file:///nowhere/a.dryfit.yaml';
    bare.open(uri, sampleText(pip));
    const failed = await bare.connection.sendRequest('dryfit/order', { uris: [uri] }).catch((error: Error) => error);
    expect(failed).toMatchObject({ message: expect.stringContaining('no shops file with prices') });
    await bare.stop();
  });

  it('is no order of a file that is no build', async () => {
    const failed = await ask('dryfit/order', { uris: [uriOf('bench.dryfit.yaml')] }).catch((error: Error) => error);
    expect(failed).toMatchObject({
      message: 'bench.dryfit.yaml is no build. Its first line would be `dryfit: build`.',
    });
  });
});

describe('a gate', () => {
  const today = new Date().toISOString().slice(0, 10);
  const uri = () => uriOf('builds/gated.dryfit.yaml');
  const text = `${sampleText(ossel)}gates:\n  dry-fit: 2026-11-01 (000000)\n`;
  const at = (word: string) => {
    const before = text.slice(0, text.indexOf(word)).split('\n');
    const position = { line: before.length - 1, character: before.at(-1)!.length };
    return { start: position, end: position };
  };
  const offered = async (word: string): Promise<readonly CodeAction[]> =>
    ask<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: uri() },
      range: at(word),
      context: { diagnostics: [], only: ['refactor.rewrite'] },
    });

  it('is ticked from the gates of the file, the void one again and the next open one', async () => {
    server.open(uri(), text);
    const actions = await offered('dry-fit: 2026');
    expect(actions.map(({ title }) => title)).toEqual([
      'Gate `dry-fit` was passed again today',
      'Gate `harness` was passed today',
    ]);
    const edit = actions[0]?.edit?.changes?.[uri()]?.[0];
    expect(edit?.newText).toMatch(new RegExp(`^${today} \\([0-9a-f]{6}\\)$`));
    expect((await offered('gates:')).map(({ title }) => title)).toEqual(['Gate `harness` was passed today']);
    expect(await offered('flight:')).toEqual([]);
  });

  it('is ticked by name, as the command line does it', async () => {
    const states = await ask<{ gate: string; is: string }[]>('dryfit/gates', { uri: uriOf(ossel) });
    expect(states[0]).toMatchObject({ gate: 'dry-fit', is: 'open' });
    const tick = await ask<TextEdit>('dryfit/tickGate', { uri: uriOf(ossel), gate: 'dry-fit' });
    execFileSync(process.execPath, [cli, 'assemble', ossel, '--tick', 'dry-fit'], { cwd: folder });
    const after = readFileSync(path.join(folder, ossel), 'utf8');
    expect(after).toBe(`${sampleText(ossel)}${tick.newText}`);
    await expect(ask('dryfit/tickGate', { uri: uriOf(ossel), gate: 'lunch' })).rejects.toThrow(
      'There is no gate `lunch`.',
    );
  });
});
