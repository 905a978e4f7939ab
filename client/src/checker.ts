/** Keeps one language server running beside the editor and starts it anew on request; must not interpret its answers. */
import * as vscode from 'vscode';
import { LanguageClient, type LanguageClientOptions, TransportKind } from 'vscode-languageclient/node';
import { explainStart, restartAfterCrash } from './crash-policy.ts';

export interface Checker extends vscode.Disposable {
  start(): Promise<void>;
  restart(): Promise<void>;
  /** Asks the server; fails when none is running. */
  ask<T>(method: string, params?: object, token?: vscode.CancellationToken): Promise<T>;
}

export function createChecker(module: string, output: vscode.LogOutputChannel): Checker {
  const watcher = vscode.workspace.createFileSystemWatcher('**/*.dryfit.{yaml,yml}');
  let client: LanguageClient | undefined;

  async function start(): Promise<void> {
    const options: LanguageClientOptions = {
      documentSelector: [{ language: 'dryfit' }],
      outputChannel: output,
      synchronize: { fileEvents: watcher, configurationSection: 'dryfit' },
      initializationOptions: vscode.workspace.getConfiguration('dryfit'),
      errorHandler: restartAfterCrash(output),
    };
    client = new LanguageClient('dryfit', 'Dryfit', { module, transport: TransportKind.ipc }, options);
    try {
      await client.start();
    } catch (error) {
      explainStart(error, output);
    }
  }

  // A client whose start failed can neither be stopped nor started again, so every start gets a new one.
  async function stop(): Promise<void> {
    const stopping = client;
    client = undefined;
    await stopping?.dispose().catch((error: unknown) => output.warn(`Stopping: ${String(error)}`));
  }

  return {
    start,
    async restart() {
      await stop();
      await start();
    },
    async ask<T>(method: string, params?: object, token?: vscode.CancellationToken) {
      if (!client) throw new Error('The checker is not running.');
      return client.sendRequest<T>(method, params, token);
    },
    async dispose() {
      watcher.dispose();
      await stop();
    },
  };
}
