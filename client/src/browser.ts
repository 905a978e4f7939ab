/** The extension in a browser-hosted editor: the same server in a web worker, its files read through the editor. */
import * as vscode from 'vscode';
import { LanguageClient, type LanguageClientOptions } from 'vscode-languageclient/browser';
import { isBuildFileName, isPassedOver } from '../../server/src/text/build-file-name.ts';
import { registerCommands } from './commands.ts';
import type { Ask } from './new-build.ts';

let client: LanguageClient | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const output = vscode.window.createOutputChannel('Dryfit', { log: true });
  const watcher = vscode.workspace.createFileSystemWatcher('**/*.dryfit.{yaml,yml}');
  // A panel brought along by the window asks before the worker is there.
  let started: Promise<void> | undefined;
  const ask: Ask = async (method, params, token) => {
    await started;
    if (!client) throw new Error('The checker is not running.');
    return client.sendRequest(method, params, token);
  };
  context.subscriptions.push(output, watcher, ...registerCommands(context, ask));
  const start = async (): Promise<void> => {
    const options: LanguageClientOptions = {
      documentSelector: [{ language: 'dryfit' }],
      outputChannel: output,
      synchronize: { fileEvents: watcher, configurationSection: 'dryfit' },
      // A copy: the settings object itself has functions, which don't go through to a worker.
      initializationOptions: JSON.parse(JSON.stringify(vscode.workspace.getConfiguration('dryfit'))),
    };
    client = new LanguageClient('dryfit', 'Dryfit', await startWorker(context.extensionUri, 'server'), options);
    client.onRequest('dryfit/readFolders', readFolders);
    client.onRequest('dryfit/solve', (problem: Problem, token) => solve(context.extensionUri, problem, token));
    client.onRequest('dryfit/read', ({ uri }: { uri: string }) => readText(vscode.Uri.parse(uri)));
    await client.start();
  };
  context.subscriptions.push(
    vscode.commands.registerCommand('dryfit.restartServer', async () => {
      await client?.dispose();
      started = start();
      await started;
    }),
  );
  started = start();
  await started;
}

export async function deactivate(): Promise<void> {
  await client?.dispose();
}

/** A worker may only be loaded from http; from elsewhere its text is read and started as a blob. */
async function startWorker(extension: vscode.Uri, name: 'server' | 'solver'): Promise<Worker> {
  const script = vscode.Uri.joinPath(extension, `dist/${name}.worker.js`);
  if (/^https?$/.test(script.scheme)) return new Worker(script.toString(true), { name: `dryfit ${name}` });
  const source = await vscode.workspace.fs.readFile(script);
  const url = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }));
  return new Worker(url, { name: `dryfit ${name}` });
}

interface Problem {
  readonly program: string;
  readonly seconds: number;
}

/** 3.5 MB, read with the first order. */
let solverBytes: Uint8Array | undefined;

/** A worker for one program, ended with its answer or when nobody waits for it any more. */
async function solve(
  extension: vscode.Uri,
  { program, seconds }: Problem,
  token: vscode.CancellationToken,
): Promise<unknown> {
  solverBytes ??= await vscode.workspace.fs.readFile(vscode.Uri.joinPath(extension, 'dist/highs.wasm'));
  const worker = await startWorker(extension, 'solver');
  try {
    return await new Promise((resolve, reject) => {
      token.onCancellationRequested(() => reject(new Error('Given up.')));
      worker.onerror = ({ message }) => reject(new Error(message ?? 'The solver could not start.'));
      worker.onmessage = ({ data }) => {
        const { solved, failed } = data as { readonly solved?: unknown; readonly failed?: string };
        if (failed === undefined) resolve(solved);
        else reject(new Error(failed));
      };
      worker.postMessage({ program, seconds, wasm: solverBytes?.slice().buffer });
    });
  } finally {
    worker.terminate();
  }
}

/** Walks the folders itself: a search finds nothing where the file system offers none, as those in memory don't. */
async function readFolders({ folders }: { folders: readonly string[] }): Promise<Record<string, string>> {
  const found = (await Promise.all(folders.map((folder) => filesBelow(vscode.Uri.parse(folder))))).flat();
  const texts = await Promise.all(found.map(async (uri) => [uri.toString(), await readText(uri)] as const));
  return Object.fromEntries(texts.filter((pair): pair is readonly [string, string] => pair[1] !== null));
}

async function filesBelow(folder: vscode.Uri): Promise<readonly vscode.Uri[]> {
  const entries = await vscode.workspace.fs.readDirectory(folder).then(
    (all) => all,
    () => [],
  );
  const found = entries.map(async ([name, type]): Promise<readonly vscode.Uri[]> => {
    if (isPassedOver(name)) return [];
    const uri = vscode.Uri.joinPath(folder, name);
    if (type === vscode.FileType.Directory) return filesBelow(uri);
    return type === vscode.FileType.File && isBuildFileName(name) ? [uri] : [];
  });
  return (await Promise.all(found)).flat();
}

async function readText(uri: vscode.Uri): Promise<string | null> {
  try {
    return new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
  } catch (error) {
    // Gone or not to be read: the workspace has no such file.
    if (error instanceof vscode.FileSystemError) return null;
    throw error;
  }
}
