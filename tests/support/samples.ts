/** The samples as a workspace in memory, and their files by name. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Workspace } from '../../server/src/library/workspace';

export const samplesFolder = path.resolve(import.meta.dirname, '../../samples');

export const sampleNames = readdirSync(samplesFolder, { recursive: true })
  .map((name) => String(name).replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.dryfit.yaml'))
  .sort();

export const sampleUri = (name: string): string => `file:///samples/${name}`;

export const sampleText = (name: string): string => readFileSync(path.join(samplesFolder, name), 'utf8');

export function sampleWorkspace(): Workspace {
  const workspace = new Workspace();
  for (const name of sampleNames) workspace.set(sampleUri(name), sampleText(name));
  return workspace;
}

/** Builds in `faulty/` hold mistakes on purpose; all others are sound. */
export const soundBuilds = sampleNames.filter((name) => name.startsWith('builds/'));
export const faultyBuilds = sampleNames.filter((name) => name.startsWith('faulty/'));
