/** A whole build taken in an empty file, through the real server: offered at once, its parts chosen by the item's own command. */
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type ApplyWorkspaceEditParams, type CompletionItem, CompletionRequest } from 'vscode-languageserver-protocol';
import { type SpawnedServer, startServer } from '../support/spawned-server';

const samples = pathToFileURL(path.resolve(import.meta.dirname, '../../samples')).href;
const uri = `${samples}/builds/new%20one.dryfit.yaml`;

let server: SpawnedServer;
let applied: ApplyWorkspaceEditParams[] = [];

beforeAll(async () => {
  server = await startServer([samples]);
  server.connection.onRequest('workspace/applyEdit', (params: ApplyWorkspaceEditParams) => {
    applied.push(params);
    return { applied: true };
  });
});

afterAll(() => server.stop());

it('says that it can', () => {
  expect(server.initialized.capabilities.executeCommandProvider?.commands).toEqual(['dryfit.fillBuild']);
});

it('chooses the parts once the beginning is in the file', async () => {
  server.open(uri, '');
  const items = await server.connection.sendRequest<CompletionItem[]>(CompletionRequest.method, {
    textDocument: { uri },
    position: { line: 0, character: 0 },
  });
  const item = items.find(({ label }) => label === 'a whole build: whoop-75')!;
  const begun = (item.textEdit as { newText: string }).newText;
  server.change(uri, 2, [{ text: begun }]);
  await server.connection.sendRequest('workspace/executeCommand', item.command!);
  expect(applied).toHaveLength(1);
  const { changes } = applied[0]!.edit;
  expect(Object.keys(changes!)).toEqual([uri]);
  const text = changes![uri]![0]!.newText;
  expect(text).toMatch(/use: pip-75\n/);
  server.change(uri, 3, [{ text }]);
  const found = await server.diagnostics(uri, (_, version) => version === 3);
  expect(found.filter(({ severity }) => severity === 1 || severity === 2)).toEqual([]);
});

it('leaves a file alone that says more by now', async () => {
  applied = [];
  server.change(uri, 4, [{ text: 'dryfit: build\nname: Mine\n' }]);
  await server.connection.sendRequest('workspace/executeCommand', {
    command: 'dryfit.fillBuild',
    arguments: [uri, 'whoop-75'],
  });
  await server.connection.sendRequest('workspace/executeCommand', { command: 'dryfit.fillBuild', arguments: [] });
  expect(applied).toEqual([]);
});

it('tells of a command that there is not', async () => {
  await expect(
    server.connection.sendRequest('workspace/executeCommand', { command: 'dryfit.none', arguments: [] }),
  ).rejects.toThrow('There is no command dryfit.none');
});
