/** The house's arrows: who may import whom, and that the engine knows no editor, no disk and no clock. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const source = path.resolve(import.meta.dirname, '../../server/src');
const files = readdirSync(source, { recursive: true })
  .map((name) => String(name).replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'));

/** A room may import from the rooms listed and from itself. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  text: [],
  vocabulary: ['text'],
  physics: [],
  build: ['text', 'vocabulary'],
  library: ['text', 'vocabulary', 'build'],
  plan: ['text', 'vocabulary', 'build', 'library', 'physics'],
  checks: ['text', 'vocabulary', 'build', 'library', 'physics', 'plan'],
  'analysis.ts': ['text', 'vocabulary', 'build', 'library', 'plan', 'checks'],
  review: ['text', 'vocabulary', 'build', 'library', 'plan', 'checks', 'analysis.ts'],
  report: ['text', 'vocabulary', 'build', 'library', 'physics', 'plan', 'checks', 'analysis.ts', 'review'],
  language: ['text', 'vocabulary', 'build', 'library', 'physics', 'plan', 'checks', 'analysis.ts', 'report'],
  solver: ['plan'],
  cli: [
    'text',
    'vocabulary',
    'build',
    'library',
    'physics',
    'plan',
    'checks',
    'analysis.ts',
    'review',
    'report',
    'solver',
  ],
  lsp: ['text', 'vocabulary', 'build', 'library', 'plan', 'checks', 'analysis.ts', 'report', 'language', 'solver'],
};

const room = (file: string): string => (file.includes('/') ? file.split('/')[0]! : file);
const imports = (file: string): string[] =>
  [...readFileSync(path.join(source, file), 'utf8').matchAll(/(?:from|import)\s+'([^']+)'/g)].map((match) => match[1]!);

const pure = new Set([
  'text',
  'vocabulary',
  'physics',
  'build',
  'library',
  'plan',
  'checks',
  'analysis.ts',
  'review',
  'report',
  'language',
]);

describe.each(files)('%s', (file) => {
  it('imports only along the arrows', () => {
    for (const target of imports(file).filter((name) => name.startsWith('.'))) {
      const to = path.posix.normalize(path.posix.join(path.posix.dirname(file), target));
      const toRoom = to.startsWith('..') ? 'outside' : to === 'analysis' ? 'analysis.ts' : room(to);
      if (toRoom === room(file) || toRoom === 'outside') continue;
      expect(allowed[room(file)], `${file} imports ${target}`).toContain(toRoom);
    }
  });

  if (pure.has(room(file)))
    it('knows no editor, no disk, no clock and no chance', () => {
      const outside = imports(file).filter((name) => !name.startsWith('.'));
      const known =
        room(file) === 'language'
          ? ['yaml', 'vscode-languageserver-types']
          : room(file) === 'text'
            ? ['yaml']
            : room(file) === 'vocabulary'
              ? ['ajv']
              : file.startsWith('report/sheet/draw/')
                ? ['d3-scale', 'd3-shape']
                : [];
      expect(outside.filter((name) => !known.includes(name))).toEqual([]);
      expect(readFileSync(path.join(source, file), 'utf8')).not.toMatch(
        /\bDate\.now\(|new Date\(\)|Math\.random\(|performance\.now\(|process\.|globalThis/,
      );
    });

  it('opens with one sentence on what it is for', () => {
    if (file.includes('generated/')) return;
    expect(readFileSync(path.join(source, file), 'utf8')).toMatch(/^\/\*\*/);
  });
});

it('has a rule for every room', () => {
  expect([...new Set(files.map(room))].filter((name) => !(name in allowed))).toEqual([]);
});
