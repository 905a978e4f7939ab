/** Entry of the language server in a web worker: files come through the client, which is the only one that can see them. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { version } from '../../../package.json';
import type { Solved } from '../plan/order-solve';
import * as draw from '../report/sheet/draw/index';
import type { Solve } from './plans';
import * as requests from './requests';
import * as seldom from './seldom';
import { type Disk, serve } from './server';

const port = globalThis as unknown as ConstructorParameters<typeof BrowserMessageReader>[0];
const connection = createConnection(new BrowserMessageReader(port), new BrowserMessageWriter(port));

const disk: Disk = {
  async readFolders(folders) {
    return new Map(
      Object.entries(await connection.sendRequest<Record<string, string>>('dryfit/readFolders', { folders })),
    );
  },
  async read(uri) {
    return (await connection.sendRequest<string | null>('dryfit/read', { uri })) ?? undefined;
  },
};

/** By the client, which can start a worker and read the extension's files. */
const solve: Solve = (program, seconds, token) =>
  connection.sendRequest<Solved>('dryfit/solve', { program, seconds }, token);

serve(
  connection,
  disk,
  {
    version,
    today: () => new Date().toISOString().slice(0, 10),
    // Within this bundle: a worker that was started from a blob has no place to load another file from.
    requests: async () => requests,
    seldom: async () => seldom,
    drawing: async () => draw,
  },
  solve,
);
