/** The build sheet over the real protocol: what a panel gets, where its things lead, trying and writing a value, giving up. Needs `npm run build`. */
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { CancellationTokenSource } from 'vscode-jsonrpc/node';
import type { SheetAnswer } from '../../server/src/language/sheet';
import { samplesFolder, sampleText } from '../support/samples';
import { type SpawnedServer, startServer } from '../support/spawned-server';

vi.setConfig({ testTimeout: 30_000 });

const name = 'builds/ossel-5.dryfit.yaml';
const text = sampleText(name);
let folder: string;
let server: SpawnedServer;
let uri: string;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'dryfit sheet '));
  cpSync(samplesFolder, folder, { recursive: true });
  uri = pathToFileURL(path.join(folder, name)).href;
  server = await startServer([pathToFileURL(folder).href]);
  server.open(uri, text);
});

afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

const sheet = (asked: object = {}): Promise<SheetAnswer | null> =>
  server.connection.sendRequest('dryfit/sheet', { uri, ...asked });

const lineOf = (words: string): number => text.slice(0, text.indexOf(words)).split('\n').length - 1;

it('waits for the folders and gives every section', async () => {
  const answer = (await sheet())!;
  expect(answer.name).toBe('Ossel 5');
  expect(answer.ids).toEqual('head fit mass fly time power wires wrong work foot'.split(' '));
  expect(answer.changed[0]!.markup).toContain('4.3 min as you fly it');
});

it('knows a place for everything that can be clicked', async () => {
  const { changed, spots } = (await sheet())!;
  const keys = changed.flatMap(({ markup }) => [...markup.matchAll(/data-spot="([^"]+)"/g)].map((match) => match[1]!));
  expect(keys.length).toBeGreaterThan(40);
  for (const key of keys) expect(spots!, key).toHaveProperty([key]);
});

it('leads to the value in a parts file, and lights up for the part in the build', async () => {
  const { spots } = (await sheet())!;
  const kv = Object.entries(spots!).find(([key]) => key.includes('.kv'))![1];
  const { range } = kv.go;
  const parts = readFileSync(path.join(folder, 'parts/motors.dryfit.yaml'), 'utf8').split('\n');
  expect(kv.go.uri).toMatch(/motors\.dryfit\.yaml$/);
  expect(parts[range.start.line]!.slice(range.start.character, range.end.character)).toBe('1800');
  expect(kv.lit).toContainEqual({ uri, from: lineOf('  motors:'), to: lineOf('M3x8 button') });
});

it('tries a value without touching the file', async () => {
  const { changed } = (await sheet({ tries: { 'motors.kv': 1950 } }))!;
  const fly = changed.find(({ id }) => id === 'fly')!.markup;
  expect(changed[0]!.markup).toContain('1950 Kv');
  expect(fly).toContain('with 1950 Kv');
  expect(fly).toContain('curve trial');
  expect((await sheet())!.changed[0]!.markup).not.toContain('1950');
});

it.each([
  ['packs.main.capacity', 1500, 'marl-6s-1300', '\n    capacity: 1500 mAh'],
  ['motors.kv', 1950, 'brunt-2207-1800', '\n    kv: 1950'],
  ['flight.altitude', 320, '120 m', '320 m'],
])('writes %s where it belongs', async (field, value, near, newText) => {
  const written = await server.connection.sendRequest<{
    uri: string;
    edit: { newText: string; range: { start: object } };
  }>('dryfit/sheetWrite', { uri, field, value });
  expect(written.uri).toBe(uri);
  expect(written.edit.newText).toBe(newText);
  expect(written.edit.range.start).toMatchObject({ line: lineOf(near) });
});

it('writes nothing that is no slider', async () => {
  for (const [field, value] of [
    ['motors.weight', 3],
    ['name', 3],
    ['motors.kv', -1],
    ['motors.kv', 'x'],
  ])
    expect(await server.connection.sendRequest('dryfit/sheetWrite', { uri, field, value })).toBeNull();
});

it('has no sheet for a parts file, or for a file that is not there', async () => {
  expect(await sheet({ uri: pathToFileURL(path.join(folder, 'parts/motors.dryfit.yaml')).href })).toBeNull();
  expect(await sheet({ uri: 'file:///nowhere.dryfit.yaml' })).toBeNull();
});

it('sends only what differs from what the panel has', async () => {
  const first = (await sheet())!;
  const same = (await sheet({ since: first.serial }))!;
  expect(same.ids).toEqual(first.ids);
  expect(same.changed).toEqual([]);
  expect(same.spots ?? null).toBeNull();
  const tried = (await sheet({ since: same.serial, tries: { 'motors.kv': 1950 } }))!;
  expect(tried.changed.map(({ id }) => id)).toContain('fly');
  expect(tried.changed.map(({ id }) => id)).not.toContain('wires');
  // Somebody who has something else gets everything.
  expect((await sheet({ since: 1 }))!.changed).toHaveLength(first.ids.length);
});

it('gives up when it is told to', async () => {
  server.change(uri, 2, [{ text: text.replace('120 m', '130 m') }]);
  const source = new CancellationTokenSource();
  const asked = server.connection.sendRequest<SheetAnswer | null>('dryfit/sheet', { uri }, source.token);
  source.cancel();
  expect(await asked.catch(() => null)).toBeNull();
  expect((await sheet())!.name).toBe('Ossel 5');
});

it('takes the build around the caret in a file of several', async () => {
  server.change(uri, 3, [{ text: `${text}\n---\n${text.replace('name: Ossel 5', 'name: Second')}` }]);
  expect((await sheet({ line: 3 }))!.name).toBe('Ossel 5');
  expect((await sheet({ line: text.split('\n').length + 5 }))!.name).toBe('Second');
});
