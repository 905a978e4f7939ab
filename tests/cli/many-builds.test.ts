/** A folder of builds by the hundred is checked in a heap that could not hold them all at once. Needs `npm run build`. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-many-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const builds = 400;
/** MiB; each build keeps some 0.2 while it is looked at. */
const heap = 64;

beforeAll(() => {
  cpSync(path.join(root, 'samples/parts'), path.join(folder, 'parts'), { recursive: true });
  cpSync(path.join(root, 'samples/bench.dryfit.yaml'), path.join(folder, 'bench.dryfit.yaml'));
  mkdirSync(path.join(folder, 'builds'));
  const sound = readFileSync(path.join(root, 'samples/builds/ossel-5.dryfit.yaml'), 'utf8');
  const faulty = readFileSync(path.join(root, 'samples/faulty/mixed-stack.dryfit.yaml'), 'utf8');
  for (let i = 0; i < builds; i++)
    writeFileSync(path.join(folder, `builds/b${i}.dryfit.yaml`), i === 7 ? faulty : sound);
});

const check = (...args: readonly string[]) =>
  spawnSync(
    process.execPath,
    [`--max-old-space-size=${heap}`, path.join(root, 'dist/cli.cjs'), 'check', '.', ...args],
    { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 26 },
  );

it(`checks ${builds} builds in ${heap} MiB, and says where the other side of each finding stands`, () => {
  const { stdout, stderr, status } = check('--format', 'ndjson');
  expect(stderr).toBe('');
  expect(status).toBeLessThan(2);
  const files = stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  const said = files.filter(({ file }) => file.startsWith('builds/'));
  expect(said).toHaveLength(builds);
  const alike = JSON.stringify(said[0].findings).replaceAll(said[0].file, 'b');
  for (const { file, findings } of said.filter(({ file }) => file !== 'builds/b7.dryfit.yaml'))
    expect(JSON.stringify(findings).replaceAll(file, 'b')).toBe(alike);
  const other = said.find(({ file }) => file === 'builds/b7.dryfit.yaml');
  const related = other.findings.flatMap(({ related }: { related: readonly unknown[] }) => related);
  const here = related.filter(({ file }: { file: string }) => file === other.file);
  expect(here.length).toBeGreaterThan(0);
  for (const { range } of here) expect(range.start.line).toBeGreaterThan(0);
}, 60_000);

it.each(['text', 'json'])(
  'says the same as %s, whatever the number of threads',
  (format) => {
    const [one, three] = ['1', '3'].map((threads) => check('--format', format, '--threads', threads));
    expect(one!.stderr).toBe('');
    expect(one!.stdout.length).toBeGreaterThan(100_000);
    expect(three).toMatchObject({ stderr: '', status: one!.status });
    expect(three!.stdout === one!.stdout).toBe(true);
  },
  120_000,
);

it('says which numbers of threads it takes', () => {
  const { status, stderr } = check('--threads', 'many');
  expect(status).toBe(2);
  expect(stderr).toContain('--threads takes a number from 1 to 99; not `many`.');
});
