/** The samples as a workspace in memory, and their files by name. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { readSourceFile, type SourceFile } from '../../server/src/build/source-file';
import { Workspace } from '../../server/src/library/workspace';

export const samplesFolder = path.resolve(import.meta.dirname, '../../samples');

export const sampleNames = readdirSync(samplesFolder, { recursive: true })
  .map((name) => String(name).replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.dryfit.yaml'))
  .sort();

export const sampleUri = (name: string): string => `file:///samples/${name}`;

export const sampleText = (name: string): string => readFileSync(path.join(samplesFolder, name), 'utf8');

/** Read once, as a file that was read never changes. */
let read: readonly SourceFile[] | undefined;

export function sampleWorkspace(): Workspace {
  read ??= sampleNames.map((name) => readSourceFile(sampleUri(name), sampleText(name)));
  const workspace = new Workspace();
  for (const file of read) workspace.take(file);
  return workspace;
}

/** Builds in `faulty/` hold mistakes on purpose; all others are sound. */
export const soundBuilds = sampleNames.filter((name) => name.startsWith('builds/'));
export const faultyBuilds = sampleNames.filter((name) => name.startsWith('faulty/'));
