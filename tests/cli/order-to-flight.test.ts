/** The built commands from consensus to first flight, as a builder types them. Needs `npm run build`. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-order-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function dryfit(args: string[], cwd = root) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(root, 'dist/cli.cjs'), ...args], {
    cwd,
    encoding: 'utf8',
    timeout: 60_000,
  });
  return { status, stdout, stderr };
}

const ossel = 'samples/builds/ossel-5.dryfit.yaml';
const dart = 'samples/builds/dart-5.dryfit.yaml';

describe('dryfit order', () => {
  it('gives JSON of the promised form, adding up to the cent', () => {
    const { status, stdout, stderr } = dryfit(['order', '--format', 'json', ossel]);
    expect([status, stderr]).toEqual([0, '']);
    const json = JSON.parse(stdout);
    expect(Object.keys(json)).toEqual([
      'currency',
      'total',
      'goods',
      'shipping',
      'taxes',
      'optimal',
      'bound',
      'lines',
      'parcels',
      'compared',
    ]);
    expect(Object.keys(json.lines[0])).toEqual(['part', 'shop', 'packs', 'pieces', 'cost']);
    expect(Object.keys(json.parcels[0])).toEqual(['shop', 'goods', 'shipping']);
    expect(Object.keys(json.compared)).toEqual(['cheapestEverywhere', 'singleShop']);
    const cents = (value: number): number => Math.round(value * 100);
    const sum = (list: readonly number[]): number => list.reduce((total, one) => total + cents(one), 0);
    expect(json.optimal).toBe(true);
    expect(json.bound).toBe(json.total);
    expect(sum(json.lines.map((line: { cost: number }) => line.cost))).toBe(cents(json.goods));
    expect(sum(json.parcels.map((one: { goods: number }) => one.goods))).toBe(cents(json.goods));
    expect(sum(json.parcels.map((one: { shipping: number }) => one.shipping))).toBe(cents(json.shipping));
    expect(cents(json.goods) + cents(json.shipping) + cents(json.taxes)).toBe(cents(json.total));
    expect(json.total).toBeLessThanOrEqual(json.compared.cheapestEverywhere);
    expect(json.total).toBeLessThanOrEqual(json.compared.singleShop);
  });

  it('orders for two friends together, cheaper than each alone, and shares what it costs', { timeout: 60_000 }, () => {
    const total = (files: string[]): number => JSON.parse(dryfit(['order', '--format', 'json', ...files]).stdout).total;
    expect(total([ossel, dart])).toBeLessThanOrEqual(total([ossel]) + total([dart]));
    const { stdout } = dryfit(['order', ossel, dart]);
    expect(stdout).toMatch(/Order for Dart 5 and Ossel 5, in EUR/);
    expect(stdout).toMatch(/proved/);
    expect(stdout).toMatch(/Parcel 2 from/);
  });

  it('keeps to the shops that are asked for, and says what cannot be', { timeout: 60_000 }, () => {
    const { stdout } = dryfit(['order', ossel, '--shops-at-most', '1']);
    expect(stdout).not.toMatch(/Parcel \d from tarn-works/);
    expect(dryfit(['order', ossel, '--prefer', 'nowhere'])).toMatchObject({ status: 2 });
    expect(dryfit(['order', ossel, '--shops-at-most', 'none'])).toMatchObject({ status: 2 });
    expect(dryfit(['order'])).toMatchObject({ status: 2 });
    expect(dryfit(['order', ossel, '--without', 'pellam', '--without', 'tarn-works']).status).toBeGreaterThan(0);
  });

  it('gives Markdown to tick off and a table for a spreadsheet', { timeout: 60_000 }, () => {
    expect(dryfit(['order', ossel, '--format', 'markdown']).stdout).toMatch(/- \[ \] 1 x ossel-225: \d+\.\d\d/);
    expect(dryfit(['order', ossel, '--format', 'csv']).stdout).toMatch(
      /^parcel,shop,part,packs,pieces,cost,currency\n1,/,
    );
  });
});

it('dryfit consensus tells what five references agree on', () => {
  const { status, stdout } = dryfit(['consensus', 'freestyle-5', '--format', 'json', '--workspace', 'samples']);
  expect(status).toBe(0);
  const json = JSON.parse(stdout);
  expect(json.references).toHaveLength(5);
  expect(json.fields.find((one: { field: string }) => one.field === 'parts.motors.kv')).toMatchObject({
    cells: 6,
    count: 5,
    median: 1800,
  });
  expect(dryfit(['consensus', 'freestlye-5']).status).toBe(2);
});

describe('on a copy of the samples', () => {
  cpSync(path.join(root, 'samples'), folder, { recursive: true });
  const file = path.join(folder, 'builds/ossel-5.dryfit.yaml');
  const text = (): string => readFileSync(file, 'utf8');

  it('dryfit assemble plans, and ticks a gate', { timeout: 60_000 }, () => {
    expect(dryfit(['assemble', file]).stdout).toMatch(/31 joints/);
    expect(dryfit(['assemble', file, '--format', 'markdown']).stdout).toMatch(/- \[ \] \*\*Gate `dry-fit`\*\*/);
    const before = text();
    expect(dryfit(['assemble', file, '--tick', 'dry-fit']).status).toBe(0);
    expect(text()).toMatch(/gates:\n {2}dry-fit: \d{4}-\d\d-\d\d \([0-9a-f]{6}\)\n$/);
    expect(text().startsWith(before)).toBe(true);
    expect(dryfit(['assemble', file, '--format', 'markdown']).stdout).toMatch(/- \[x\] \*\*Gate `dry-fit`\*\*/);
    expect(dryfit(['assemble', file, '--tick', 'fly']).status).toBe(2);
  });

  it('dryfit setup tells ports and charging', () => {
    const { stdout } = dryfit(['setup', file]);
    expect(stdout).toMatch(/uart2 +the receiver/);
    expect(stdout).toMatch(/25\.20 V +1\.30 A/);
  });

  it('dryfit delivery compares, and writes only when asked', { timeout: 60_000 }, () => {
    const before = text();
    expect(dryfit(['delivery', file, 'motors.weight=40 g'])).toMatchObject({ status: 1 });
    expect(text()).toBe(before);
    expect(dryfit(['delivery', file, 'motors.weight=32.6 g', '--write'])).toMatchObject({ status: 0 });
    expect(text()).toMatch(/use: brunt-2207-1800\n {4}weight: 32\.6 g \(weighed \d{4}-\d\d-\d\d\)\n/);
    expect(dryfit(['delivery', file]).stdout).toMatch(/\[ \] +\d+ x brunt-2207-1800/);
    expect(dryfit(['delivery', file, 'motors.weight=heavy']).status).toBe(2);
  });
});
