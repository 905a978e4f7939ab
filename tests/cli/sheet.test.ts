/** The built `dryfit sheet`: forms, names, one picture, and what it says when it cannot run. Needs `npm run build`. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, it, vi } from 'vitest';

// A busy machine takes seconds to start a process.
vi.setConfig({ testTimeout: 60_000 });

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-sheet-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ossel = path.join(root, 'samples/builds/ossel-5.dryfit.yaml');

function sheet(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(root, 'dist/cli.cjs'), 'sheet', ...args], {
    cwd: folder,
    encoding: 'utf8',
    timeout: 60_000,
  });
  return { status, stdout, stderr };
}

const written = (name: string): string => readFileSync(path.join(folder, name), 'utf8');

it('writes a page, a picture of all, and a page for paper', () => {
  for (const name of ['build.html', 'build.svg', 'build.pdf-ready.html'])
    expect(sheet(ossel, '-o', name)).toEqual({ status: 0, stdout: `Wrote ${name}.\n`, stderr: '' });
  expect(written('build.html')).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
  expect(written('build.html')).toContain('prefers-color-scheme');
  expect(written('build.svg')).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
  expect(written('build.pdf-ready.html')).toContain('size:A4');
  expect(written('build.pdf-ready.html')).toContain('<details open ');
});

it('takes the other paper and another pack', () => {
  expect(sheet(ossel, '--paper', 'letter', '--pack', 'light', '-o', 'light.html').status).toBe(0);
  expect(written('light.html')).toContain('size:letter');
  expect(written('light.html')).toContain('pack light');
});

it('writes one picture, to a file or to stdout', () => {
  expect(sheet(ossel, '--part', 'thrust', '-o', 'thrust.svg').status).toBe(0);
  expect(written('thrust.svg')).toContain('Thrust of all motors over throttle');
  expect(sheet(ossel, '--part', 'thrust').stdout).toBe(written('thrust.svg'));
});

it('gives the page on stdout when no file is named', () => {
  expect(sheet(ossel).stdout).toMatch(/^<!doctype html>/);
});

it.each([
  [['-o', 'build.pdf'], '.pdf-ready.html'],
  [['--part', 'nonsense'], 'plan, stack, mass, thrust'],
  [['--part', 'thrust', '-o', 'thrust.html'], 'ends in .svg'],
  [['--pack', 'nonsense'], 'main, light'],
  [['--paper', 'A5'], 'A4, letter'],
  [['-o', 'nowhere/build.html'], 'Cannot write nowhere/build.html'],
])('says why it cannot run with %j', (args, why) => {
  const { status, stdout, stderr } = sheet(ossel, ...args);
  expect([status, stdout]).toEqual([2, '']);
  expect(stderr).toContain(why);
});

it('says so when the file is no build', () => {
  expect(sheet(path.join(root, 'samples/shops/pellam.dryfit.yaml')).stderr).toContain('is no build');
});
