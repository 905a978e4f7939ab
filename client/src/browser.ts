/** The extension in a browser-hosted editor: the same server in a web worker, its files read through the editor. */
import * as vscode from 'vscode';
import { LanguageClient, type LanguageClientOptions } from 'vscode-languageclient/browser';
import { type Ask, registerNewBuild } from './new-build.ts';
import { registerNewPart } from './new-part.ts';
import { registerSheet } from './sheet.ts';
import { registerShow } from './show.ts';

let client: LanguageClient | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const output = vscode.window.createOutputChannel('Dryfit', { log: true });
  const watcher = vscode.workspace.createFileSystemWatcher('**/*.dryfit.{yaml,yml}');
  const ask: Ask = async (method, params, token) => {
    if (!client) throw new Error('The checker is not running.');
    return client.sendRequest(method, params, token);
  };
  context.subscriptions.push(
    output,
    watcher,
    ...registerShow(),
    registerNewPart(ask),
    registerNewBuild(ask),
    registerSheet(context, ask),
  );
  const start = async (): Promise<void> => {
    const options: LanguageClientOptions = {
      documentSelector: [{ language: 'dryfit' }],
      outputChannel: output,
      synchronize: { fileEvents: watcher, configurationSection: 'dryfit' },
      // A copy: the settings object itself has functions, which don't go through to a worker.
      initializationOptions: JSON.parse(JSON.stringify(vscode.workspace.getConfiguration('dryfit'))),
    };
    client = new LanguageClient('dryfit', 'Dryfit', await startWorker(context), options);
    client.onRequest('dryfit/readFolders', readFolders);
    client.onRequest('dryfit/read', ({ uri }: { uri: string }) => readText(vscode.Uri.parse(uri)));
    await client.start();
  };
  context.subscriptions.push(
    vscode.commands.registerCommand('dryfit.restartServer', async () => {
      await client?.dispose();
      await start();
    }),
  );
  await start();
}

export async function deactivate(): Promise<void> {
  await client?.dispose();
}

/** A worker may only be loaded from http; from elsewhere its text is read and started as a blob. */
async function startWorker(context: vscode.ExtensionContext): Promise<Worker> {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist/server.worker.js');
  if (/^https?$/.test(script.scheme)) return new Worker(script.toString(true), { name: 'dryfit' });
  const source = await vscode.workspace.fs.readFile(script);
  const url = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }));
  return new Worker(url, { name: 'dryfit' });
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
    if (name.startsWith('.') || name === 'node_modules') return [];
    const uri = vscode.Uri.joinPath(folder, name);
    if (type === vscode.FileType.Directory) return filesBelow(uri);
    return type === vscode.FileType.File && /\.dryfit\.ya?ml$/i.test(name) ? [uri] : [];
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
