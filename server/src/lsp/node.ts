/** Entry of the language server in a Node process: the connection and the disk, nothing else. */
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { version } from '../../../package.json';
import type * as Draw from '../report/sheet/draw/index';
import { isBuildFileName, isPassedOver } from '../text/build-file-name';
import { isBeyondReading, unread } from '../text/limits';
import { explainedOn } from './checks-page';
import type * as Requests from './requests';
import type * as Seldom from './seldom';
import { type Disk, serve } from './server';
import { solveInThread } from './solver-thread';
import { canonicalUri } from './uri';

// Of the module of promises, which would be loaded at every start, three functions are wanted.
const [readdir, readFile, stat] = [promisify(fs.readdir), promisify(fs.readFile), promisify(fs.stat)];

async function readText(file: string): Promise<string | undefined> {
  try {
    const { size } = await stat(file);
    return isBeyondReading(size) ? unread : await readFile(file, 'utf8');
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    // Gone, a folder, or not ours to read: the workspace has no such file.
    if (code === 'ENOENT' || code === 'EISDIR' || code === 'ENOTDIR' || code === 'EACCES' || code === 'EPERM')
      return undefined;
    throw error;
  }
}

async function walk(folder: string, found: string[]): Promise<void> {
  const entries = await readdir(folder, { withFileTypes: true }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT' || error.code === 'EACCES' || error.code === 'ENOTDIR' || error.code === 'EPERM')
      return [];
    throw error;
  });
  for (const entry of entries) {
    if (isPassedOver(entry.name)) continue;
    const full = path.join(folder, entry.name);
    if (entry.isDirectory()) await walk(full, found);
    else if (entry.isFile() && isBuildFileName(entry.name)) found.push(full);
  }
}

const disk: Disk = {
  async readFolders(folders) {
    const found: string[] = [];
    for (const folder of folders) if (folder.startsWith('file:')) await walk(fileURLToPath(folder), found);
    const texts = await Promise.all(
      found.map(async (file) => [canonicalUri(pathToFileURL(file).href), await readText(file)] as const),
    );
    return new Map(texts.filter((pair): pair is readonly [string, string] => pair[1] !== undefined));
  },
  async read(uri) {
    return uri.startsWith('file:') && isBuildFileName(uri) ? readText(fileURLToPath(uri)) : undefined;
  },
};

const page = path.join(__dirname, 'checks.md');

serve(
  createConnection(ProposedFeatures.all),
  disk,
  {
    version,
    explains: fs.existsSync(page) ? explainedOn(page) : undefined,
    today: () => new Date().toISOString().slice(0, 10),
    // Bundles of their own beside this one: the first findings wait for none of them, and most sessions never plan an order or open a sheet.
    requests: () => import('./requests.cjs' as string) as Promise<typeof Requests>,
    seldom: () => import('./seldom.cjs' as string) as Promise<typeof Seldom>,
    drawing: () => import('./sheet.cjs' as string) as Promise<typeof Draw>,
  },
  solveInThread,
);
