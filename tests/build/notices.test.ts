/** The licences that go with the package: of everything that is bundled, and nothing that asks for more than its own text. Needs `npm run build`. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const notices = readFileSync(path.join(root, 'dist/notices.txt'), 'utf8');
const named = [...notices.matchAll(/^(\S+) (\d+\.\d+\.\d+), (\S+)$/gm)].map(([, name, version, licence]) => ({
  name: name!,
  version: version!,
  licence: licence!,
}));
const { files } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));

it('names each dependency of which code ships, in the version that is installed', () => {
  // Of ajv only what it generated is shipped.
  const expected = [
    'd3-scale',
    'd3-shape',
    'highs',
    'vscode-languageclient',
    'vscode-languageserver',
    'vscode-languageserver-textdocument',
    'yaml',
  ];
  expect(named.map(({ name }) => name)).toEqual(expect.arrayContaining(expected));
  for (const { name, version } of named)
    expect(JSON.parse(readFileSync(path.join(root, 'node_modules', name, 'package.json'), 'utf8')).version).toBe(
      version,
    );
});

it('holds licences that ask for nothing but to be repeated, each with its text', () => {
  expect([...new Set(named.map(({ licence }) => licence))].sort()).toEqual(['BlueOak-1.0.0', 'ISC', 'MIT']);
  for (const piece of notices.split('-'.repeat(72))) expect(piece.length).toBeGreaterThan(500);
});

it('is in the package', () => {
  expect(files).toContain('dist/notices.txt');
});
