/** What no well-behaved client sends: the server answers with an error or not at all, and goes on working. Needs `npm run build`. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sampleText } from '../support/samples';
import { seeded } from '../support/seeded';
import { type SpawnedServer, startServer } from '../support/spawned-server';

const uri = 'file:///abused/build.dryfit.yaml';
const text = sampleText('builds/ossel-5.dryfit.yaml');
const far = 2 ** 31 - 1;
let server: SpawnedServer;
let version = 1;

beforeAll(async () => {
  server = await startServer();
  server.open(uri, text);
});
afterAll(() => server.stop());

/** After whatever was sent, an edit is still seen and a hover still answered. */
async function stillWorks(): Promise<void> {
  version += 10;
  server.change(uri, version, [{ text: 'dryfit: build\nname: A\nparts:\n  strap:\n    weight: 6\n' }]);
  const wanted = version;
  const found = await server.diagnostics(uri, (_, at) => at === wanted);
  expect(found.map((one) => one.code)).toContain('value-misread');
  version++;
  server.change(uri, version, [{ text }]);
  const hover = await server.connection.sendRequest('textDocument/hover', {
    textDocument: { uri },
    position: { line: 1, character: 7 },
  });
  expect(JSON.stringify(hover)).toContain('Ossel 5');
  expect(server.process.exitCode).toBeNull();
}

const positional = ['hover', 'completion', 'definition', 'references', 'prepareRename', 'documentHighlight'] as const;

describe('the server goes on after', () => {
  it('a method that nobody knows', async () => {
    await expect(server.connection.sendRequest('textDocument/telepathy', { textDocument: { uri } })).rejects.toThrow(
      /Unhandled method/,
    );
    await server.connection.sendNotification('$/nonsense', { a: 1 });
    await server.connection.sendNotification('textDocument/didVanish', { textDocument: { uri } });
    await stillWorks();
  });

  it.each(positional)('%s at places that there are not', async (method) => {
    for (const position of [
      { line: far, character: far },
      { line: 0, character: far },
      { line: -1, character: -1 },
      { line: 3, character: -5 },
    ])
      await server.connection.sendRequest(`textDocument/${method}`, {
        textDocument: { uri },
        position,
        context: { includeDeclaration: true },
      });
    await stillWorks();
  });

  it.each(positional)('%s in files that it never saw', async (method) => {
    for (const unseen of ['file:///abused/nowhere.dryfit.yaml', 'untitled:Untitled-1', 'no uri at all', ''])
      await server.connection.sendRequest(`textDocument/${method}`, {
        textDocument: { uri: unseen },
        position: { line: 0, character: 0 },
        context: { includeDeclaration: true },
      });
    await stillWorks();
  });

  it.each(['hover', 'rename', 'codeAction', 'foldingRange', 'selectionRange', 'codeLens', 'inlayHint'])(
    '%s without what it needs: an error or nothing, and the next one is answered',
    async (method) => {
      for (const params of [{}, { textDocument: null }, { textDocument: {} }, { textDocument: { uri: 7 } }])
        await server.connection.sendRequest(`textDocument/${method}`, params).then(
          (answer) => expect(answer ?? []).toEqual([]),
          (error: Error) => expect(error.message).not.toBe(''),
        );
      await stillWorks();
    },
  );

  it('edits out of order, of an older version, of a file that is not open, and over ranges that there are not', async () => {
    server.change(uri, 1, [{ text: 'dryfit: build\nname: Old\n' }]);
    server.change(uri, version + 5, [
      { range: { start: { line: far, character: 0 }, end: { line: far, character: far } }, text: '\n# far\n' },
    ]);
    server.change(uri, version + 2, [
      { range: { start: { line: 4, character: 9 }, end: { line: 1, character: 2 } }, text: 'x' },
    ]);
    server.change('file:///abused/closed.dryfit.yaml', 4, [{ text: 'dryfit: build\n' }]);
    server.change(uri, version + 3, []);
    await stillWorks();
  });

  it('a file opened twice, closed twice, and closed while it is being asked about', async () => {
    const other = 'file:///abused/other.dryfit.yaml';
    server.open(other, text);
    server.open(other, text, 2);
    const asked = positional.map((method) =>
      server.connection.sendRequest(`textDocument/${method}`, {
        textDocument: { uri: other },
        position: { line: 8, character: 12 },
        context: { includeDeclaration: true },
      }),
    );
    for (let turn = 0; turn < 2; turn++)
      await server.connection.sendNotification('textDocument/didClose', { textDocument: { uri: other } });
    await Promise.all(asked);
    await stillWorks();
  });

  it('200 edits at once with a request between any two', async () => {
    const chance = seeded(11);
    const answers: Promise<unknown>[] = [];
    for (let i = 0; i < 200; i++) {
      version++;
      server.change(uri, version, [
        {
          range: {
            start: { line: chance.below(90), character: 0 },
            end: { line: chance.below(90), character: chance.below(9) },
          },
          text: chance.pick(['', '- ', ': ', '&a ', '*a', '{', '\u0000', '\ud800', 'use: ', '\r\n']),
        },
      ]);
      answers.push(
        server.connection.sendRequest(`textDocument/${chance.pick(positional)}`, {
          textDocument: { uri },
          position: { line: chance.below(90), character: chance.below(30) },
          context: { includeDeclaration: true },
        }),
      );
    }
    await Promise.all(answers);
    await stillWorks();
  });
});

describe('what is no message at all', () => {
  it.each([
    ['random bytes', Buffer.from(Array.from({ length: 4000 }, (_, i) => (i * 7919 + 13) % 256))],
    ['a header that promises more than comes', Buffer.from('Content-Length: 99999999\r\n\r\n{')],
    ['a length that is no number', Buffer.from('Content-Length: many\r\n\r\n{}')],
    ['a body that is no JSON', Buffer.from('Content-Length: 9\r\n\r\n{"a": tru')],
    ['a body that is no request', Buffer.from('Content-Length: 2\r\n\r\n42')],
  ])('%s: the server ends or waits, and does not run wild', async (_, bytes) => {
    const victim = await startServer();
    const exit = new Promise((resolve) => victim.process.once('exit', resolve));
    victim.process.stdin!.write(bytes);
    victim.process.stdin!.end();
    // Its input is over, so that a server that only waited ends as well.
    const ended = await Promise.race([exit, new Promise((resolve) => setTimeout(() => resolve('runs on'), 5000))]);
    victim.process.kill('SIGKILL');
    victim.connection.dispose();
    expect(ended).not.toBe('runs on');
  });
});
