/** The real server process over its real protocol, on stdio. Waits with a limit; never guesses what the server did. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import path from 'node:path';
import {
  createMessageConnection,
  type MessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-jsonrpc/node';
import type { Diagnostic, InitializeResult } from 'vscode-languageserver-protocol';

export const serverFile = path.resolve(import.meta.dirname, '../../dist/server.cjs');
const liveMemoryFile = path.resolve(import.meta.dirname, 'live-memory.cjs');

export interface SpawnedServer {
  readonly connection: MessageConnection;
  readonly process: ChildProcessWithoutNullStreams;
  readonly initialized: InitializeResult;
  /** The next diagnostics for a URI that satisfy a condition. */
  diagnostics(
    uri: string,
    fits: (list: readonly Diagnostic[], version: number | undefined) => boolean,
  ): Promise<readonly Diagnostic[]>;
  open(uri: string, text: string, version?: number): void;
  change(uri: string, version: number, changes: readonly object[]): void;
  /** Bytes alive in the server after everything unused was collected. Unlike its resident memory, this does not depend on when the collector runs. */
  liveMemory(): Promise<number>;
  stop(): Promise<void>;
}

export async function startServer(folders: readonly string[] = []): Promise<SpawnedServer> {
  const child = spawn(process.execPath, ['--expose-gc', '--require', liveMemoryFile, serverFile, '--stdio'], {
    stdio: ['pipe', 'pipe', 'pipe', 'ipc'],
  }) as ChildProcessWithoutNullStreams;
  let errors = '';
  child.stderr.on('data', (data) => {
    errors += data;
  });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const latest = new Map<string, { diagnostics: Diagnostic[]; version?: number }>();
  const waiting = new Set<() => void>();
  connection.onNotification(
    'textDocument/publishDiagnostics',
    (params: { uri: string; version?: number; diagnostics: Diagnostic[] }) => {
      latest.set(params.uri, params);
      for (const wake of waiting) wake();
    },
  );
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('workspace/workspaceFolders', () => null);
  connection.listen();
  const initialized = await connection.sendRequest<InitializeResult>('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: {
      workspace: { workspaceFolders: true },
      textDocument: { publishDiagnostics: { relatedInformation: true } },
    },
    workspaceFolders: folders.map((uri) => ({ uri, name: uri })),
  });
  await connection.sendNotification('initialized', {});
  return {
    connection,
    process: child,
    initialized,
    diagnostics: (uri, fits) =>
      new Promise((resolve, reject) => {
        const look = (): void => {
          const known = latest.get(uri);
          if (!known || !fits(known.diagnostics, known.version)) return;
          clearTimeout(limit);
          waiting.delete(look);
          resolve(known.diagnostics);
        };
        const limit = setTimeout(() => {
          waiting.delete(look);
          reject(
            new Error(
              `no such diagnostics for ${uri}; last: ${JSON.stringify(latest.get(uri)?.diagnostics.map((one) => one.code))}\n${errors}`,
            ),
          );
        }, 8000);
        waiting.add(look);
        look();
      }),
    open: (uri, text, version = 1) =>
      void connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'dryfit', version, text },
      }),
    change: (uri, version, contentChanges) =>
      void connection.sendNotification('textDocument/didChange', { textDocument: { uri, version }, contentChanges }),
    liveMemory: () =>
      new Promise((resolve) => {
        child.once('message', (bytes) => resolve(bytes as number));
        child.send('live memory');
      }),
    async stop() {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      await new Promise((resolve) => child.once('exit', resolve));
      connection.dispose();
    },
  };
}
