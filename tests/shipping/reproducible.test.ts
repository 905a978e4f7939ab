/** The same sources make the same files to the last byte, wherever and whenever they are built. Needs `npm run build`. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const elsewhere = mkdtempSync(path.join(tmpdir(), 'dryfit-again-'));
afterAll(() => rmSync(elsewhere, { recursive: true, force: true }));

const sources = [
  'client',
  'server',
  'schemas',
  'samples',
  'tests',
  'tsconfig.json',
  'package.json',
  'README.md',
  'CHANGELOG.md',
  'LICENSE',
];
const shipped: readonly string[] = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')).files;
const hashOf = (file: string): string => createHash('sha256').update(readFileSync(file)).digest('hex');
const run = (folder: string, ...args: string[]): void =>
  void execFileSync(process.execPath, args, { cwd: folder, stdio: 'pipe', timeout: 120_000 });

beforeAll(() => {
  for (const name of sources)
    cpSync(path.join(root, name), path.join(elsewhere, name), {
      recursive: true,
      filter: (file) => path.basename(file) !== 'generated',
    });
  symlinkSync(path.join(root, 'node_modules'), path.join(elsewhere, 'node_modules'), 'junction');
  run(elsewhere, 'server/build/bundle.mjs');
}, 240_000);

it.each(shipped.filter((name) => name.startsWith('dist/')))('%s', (name) => {
  expect(hashOf(path.join(elsewhere, name))).toBe(hashOf(path.join(root, name)));
});

it('the package for the editor, small enough', { timeout: 240_000 }, () => {
  const [here, there] = [path.join(elsewhere, 'here.vsix'), path.join(elsewhere, 'there.vsix')];
  run(root, 'server/build/package.mjs', '--out', here);
  run(elsewhere, 'server/build/package.mjs', '--out', there);
  expect(hashOf(there)).toBe(hashOf(here));
  expect(statSync(here).size).toBeLessThan(4e6);
});
