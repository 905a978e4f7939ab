/** `dryfit part` as it is typed: standard input in, an entry and what is missing out. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const cli = path.resolve(import.meta.dirname, '../../dist/cli.cjs');
const page = readFileSync(path.join(import.meta.dirname, 'pages/motor.txt'), 'utf8');

const part = (input: string, ...args: string[]) =>
  spawnSync(process.execPath, [cli, 'part', ...args], { input, encoding: 'utf8', timeout: 20_000 });

describe('dryfit part', () => {
  it('prints an entry with the words of the page, and what is missing', () => {
    const { stdout, status } = part(page, '--kind', 'motor', '--id', 'murrdraht-2207');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^ {2}murrdraht-2207:\n {4}kind: motor\n/);
    expect(stdout).toMatch(/^ {4}weight: 33\.4 g \(seller \d{4}-\d\d-\d\d\) {3}# - Gewicht: 33,4 g/m);
    expect(stdout).toMatch(/Not said on the page.*\n {2}# {3}\S+ .*\d+ checks?/);
  });

  it('says the same in JSON', () => {
    const { stdout } = part(page, '--kind', 'motor', '--format', 'json');
    const said = JSON.parse(stdout);
    expect(said.fields.find((one: { path: string }) => one.path === 'kv')).toMatchObject({ words: '- KV: 1750' });
    expect(said.missing.length).toBeGreaterThan(0);
  });

  it.each([
    [page, ['--kind', 'anchor'], /--kind takes frame, motor/],
    [page, [], /--kind takes/],
    ['', ['--kind', 'motor'], /Nothing came/],
    [page, ['--kind', 'motor', '--id', 'a b'], /is no id/],
  ])('explains what it cannot do', (input, args, words) => {
    const { stderr, status } = part(input, ...args);
    expect(status).toBe(2);
    expect(stderr).toMatch(words);
  });

  it.each([
    ['fc', 'flight-controller'],
    ['VTX', 'video-transmitter'],
    ['4in1', 'esc'],
  ])('takes --kind %s for %s', (word, kind) => {
    expect(part('Weight: 8 g', '--kind', word).stdout).toContain(`kind: ${kind}\n`);
  });

  it('asks which of two kinds is meant', () => {
    const { stderr, status } = part('Weight: 8 g', '--kind', 'antenna');
    expect(status).toBe(2);
    expect(stderr).toMatch(/`antenna` may be video-antenna or receiver-antenna/);
  });

  it('explains itself and its kinds alone', () => {
    const { stdout, status } = part('', '--help');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^ {2}dryfit part --kind KIND[\s\S]*flight-controller[\s\S]*--typical/);
    expect(stdout).not.toMatch(/dryfit check/);
  });

  it('lists the lines that it did not read', () => {
    expect(part('Rill\nnew\nWeight: 8 g\nPoles: 14', '--kind', 'motor').stdout).toMatch(
      /# Not read:\n {2}# {3}Poles: 14\n/,
    );
  });

  it('chooses no id that the workspace has, and says so of one that was asked for', () => {
    const cwd = mkdtempSync(path.join(tmpdir(), 'dryfit-part-'));
    try {
      writeFileSync(path.join(cwd, 'p.dryfit.yaml'), 'dryfit: parts\n\nparts:\n  rill:\n    kind: motor\n');
      const run = (...args: string[]) =>
        spawnSync(process.execPath, [cli, 'part', '--kind', 'motor', ...args], {
          cwd,
          input: 'Rill\nnew\nWeight: 8 g',
          encoding: 'utf8',
          timeout: 20_000,
        });
      expect(run().stdout).toMatch(/^ {2}rill-2:\n/);
      const asked = run('--id', 'rill');
      expect(asked.stdout).toMatch(/^ {2}rill:\n/);
      expect(asked.stderr).toMatch(/`rill` is in this workspace already/);
    } finally {
      rmSync(cwd, { recursive: true });
    }
  });

  it('ends with 1 when nothing was recognised', () => {
    expect(part('Thank you for your order.', '--kind', 'motor').status).toBe(1);
  });
});
