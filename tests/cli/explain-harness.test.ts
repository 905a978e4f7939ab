/** `dryfit explain` and `dryfit harness` as processes. Needs `npm run build`. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { allChecks } from '../../server/src/checks/generated/all';
import { explainedOn } from '../../server/src/lsp/checks-page';
import { referencePage } from '../../server/src/report/reference';

const root = path.resolve(import.meta.dirname, '../..');
const dryfit = (...args: string[]) =>
  spawnSync(process.execPath, [path.join(root, 'dist/cli.cjs'), ...args], {
    cwd: root,
    encoding: 'utf8',
    timeout: 30_000,
    maxBuffer: 1 << 26,
  });

describe('dryfit explain', () => {
  it('gives all checks as data', () => {
    const list = JSON.parse(dryfit('explain', '--format', 'json').stdout);
    expect(list.map((one: { id: string }) => one.id).sort()).toEqual(allChecks.map((check) => check.id).sort());
    for (const one of list)
      expect(Object.keys(one)).toEqual([
        'id',
        'title',
        'group',
        'severity',
        'danger',
        'why',
        'remedy',
        'source',
        'needs',
        'may',
        'bad',
        'good',
      ]);
  });

  it('explains one, and offers the nearest when there is none of that name', () => {
    expect(dryfit('explain', 'battery-plug-differs').stdout).toMatch(/Why .*\n.*Do /);
    expect(dryfit('explain', 'battery-plug-difers')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('battery-plug-differs'),
    });
  });

  it('has a page with a heading at the line each finding links to', () => {
    const page = path.join(root, 'dist/checks.md');
    const text = readFileSync(page, 'utf8');
    expect(text).toBe(referencePage(allChecks));
    const rows = text.split('\n');
    const explains = explainedOn(page);
    for (const { id } of allChecks) {
      const [address, line] = explains(id)!.split('#L');
      expect(address).toBe(pathToFileURL(page).href);
      expect(rows[Number(line) - 1]).toBe(`### ${id}`);
    }
    expect(explains('no-such-check')).toBeUndefined();
  });
});

describe('dryfit harness', () => {
  it('says that a matching cable may be plugged in', () => {
    const { status, stdout } = dryfit('harness', 'samples/builds/ossel-5.dryfit.yaml');
    expect(status).toBe(0);
    expect(stdout).toContain('Plug it in');
  });

  it('gives the moves for one that may not, with the meter first', () => {
    const { status, stdout } = dryfit('harness', 'samples/faulty/mixed-stack.dryfit.yaml');
    expect(status).toBe(1);
    expect(stdout).toContain('Do not plug it in');
    expect(stdout).toContain('Move in the plug at the flight controller');
    expect(stdout).toContain('current limiter');
    const json = JSON.parse(dryfit('harness', 'samples/faulty/mixed-stack.dryfit.yaml', '--format', 'json').stdout);
    expect(json.danger).toBe(5);
    expect(Object.keys(json.wires)).toHaveLength(8);
  });

  it('says what is missing when there is no cable to read', () => {
    expect(dryfit('harness', 'samples/builds/pip-75.dryfit.yaml')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('esc-socket'),
    });
  });
});
