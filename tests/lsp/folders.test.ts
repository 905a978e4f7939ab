/** Several folders in one window, each with its own settings and library, and files of every spelling. Needs `npm run build`. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type SpawnedServer, startServer } from '../support/spawned-server';

const build = `dryfit: build
name: Same in both
parts:
  frame:
    motor-mounts: 16x16 M3
  motors:
    mount: 19x19 M3
  esc:
    type: 4-in-1
    cells: 3S-4S
    mount: 30.5x30.5 M3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`;

let root: string;
let server: SpawnedServer;

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), 'dryfit-folders-'));
});
afterEach(async () => {
  await server.stop();
  rmSync(root, { recursive: true, force: true });
});

const uri = (...names: string[]): string => pathToFileURL(path.join(root, ...names)).href;

function put(name: string, text: string): void {
  mkdirSync(path.dirname(path.join(root, name)), { recursive: true });
  writeFileSync(path.join(root, name), text);
}

it('reads each folder with its own settings', async () => {
  put(
    'one/settings.dryfit.yaml',
    'dryfit: settings\nregion: EU\nseverity:\n  motor-holes-off-arm:\n    as: warning\n    because: adapters lie here\n',
  );
  put('one/a.dryfit.yaml', build);
  put('two/a.dryfit.yaml', build);
  server = await startServer([uri('one'), uri('two')]);
  const severityIn = async (folder: string) => {
    const list = await server.diagnostics(uri(folder, 'a.dryfit.yaml'), (all) =>
      all.some(({ code }) => code === 'motor-holes-off-arm'),
    );
    return list.find(({ code }) => code === 'motor-holes-off-arm')?.severity;
  };
  expect([await severityIn('one'), await severityIn('two')]).toEqual([2, 1]);
});

it('reads a file the same with CRLF, a byte order mark, blanks in its name, and an escaped colon', async () => {
  put('my builds/a build.dryfit.yaml', build);
  put('my builds/b.dryfit.yaml', `\ufeff${build.replaceAll('\n', '\r\n')}`);
  server = await startServer([uri('my builds')]);
  const found = await Promise.all(
    ['a build', 'b'].map(async (name) => {
      const list = await server.diagnostics(uri('my builds', `${name}.dryfit.yaml`), (all) => all.length > 0);
      return list.map(({ code, message, range }) => ({
        code,
        message,
        line: range.start.line,
        at: range.start.character,
      }));
    }),
  );
  expect(found[0]!.length).toBeGreaterThan(0);
  expect(found[1]).toEqual(found[0]);
});

it.each(['is opened', 'is heard of'])(
  'reads a folder that came to be meanwhile as soon as a file of it %s',
  async (how) => {
    put('club/a.dryfit.yaml', build);
    server = await startServer([uri('club')]);
    await server.diagnostics(uri('club', 'a.dryfit.yaml'), (all) => all.length > 0);
    const text = 'dryfit: build\nname: New\nparts:\n  motors:\n    use: gale-2207\n';
    put('club/new/build.dryfit.yaml', text);
    put('club/new/parts.dryfit.yaml', 'dryfit: parts\nparts:\n  gale-2207:\n    kind: motor\n    kv: 1750\n');
    put('outside/parts.dryfit.yaml', 'dryfit: parts\nparts:\n  gale-2306:\n    kind: motor\n');
    const one = uri('club', 'new', 'build.dryfit.yaml');
    if (how === 'is opened') server.open(one, text);
    else
      await server.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri: one, type: 1 }] });
    const outside = uri('outside', 'build.dryfit.yaml');
    server.open(outside, text.replace('2207', '2306'));
    await server.diagnostics(one, (all) => !all.some(({ code }) => code === 'part-unknown'));
    const symbols = async (query: string) =>
      (await server.connection.sendRequest<{ name: string }[]>('workspace/symbol', { query })).map(({ name }) => name);
    await expect.poll(() => symbols('gale')).toEqual(expect.arrayContaining(['gale-2207']));
    // What lies outside of the folders is not read for being near an open file.
    expect((await symbols('gale-2306')).filter((name) => name === 'gale-2306')).toEqual([]);
  },
);
