/** `dryfit part` as it is typed: standard input in, an entry and what is missing out. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
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

  it('ends with 1 when nothing was recognised', () => {
    expect(part('Thank you for your order.', '--kind', 'motor').status).toBe(1);
  });
});
