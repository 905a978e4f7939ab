/** Shares of the files for a matrix of machines, what changed since a version, and a line a file. Needs `npm run build`. */
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { shardOf } from '../../server/src/cli/shard';
import { sampleNames, sampleText } from '../support/samples';
import { club } from './club';
import { Repository } from './repository';

// Each starts processes, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const repository = new Repository({
  ...club,
  ...Object.fromEntries(sampleNames.map((name) => [`samples/${name}`, sampleText(name)])),
});
afterEach(() => repository.reset());
afterAll(() => repository.done());

interface Line {
  file: string;
  findings: { check: string }[];
}
const lines = (...args: string[]): Line[] =>
  repository
    .dryfit('check', '--format', 'ndjson', ...args)
    .out.split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line));

describe('shards', () => {
  it('hold every file exactly once and say what the whole check says', () => {
    const whole = lines();
    const shares = [1, 2, 3, 4].map((i) => lines('--shard', `${i}/4`));
    const sorted = (all: Line[]): Line[] => [...all].sort((a, b) => (a.file < b.file ? -1 : 1));
    expect(sorted(shares.flat())).toEqual(sorted(whole));
    expect(whole.length).toBe(Object.keys(club).length + sampleNames.length);
    const sizes = shares.map((share) => share.length);
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
  });

  it('are even by count and by size, and the same whatever order the files come in', () => {
    const files = Array.from({ length: 1000 }, (_, i) => `builds/${String(i * 7919).padStart(8, '0')}.dryfit.yaml`);
    const sizeOf = (file: string): number => 500 + (Number(file.replace(/\D/g, '')) % 4000);
    const shares = Array.from({ length: 7 }, (_, i) => shardOf(files, { index: i + 1, of: 7 }, sizeOf));
    expect(shares.flat().sort()).toEqual([...files].sort());
    const sizes = shares.map((share) => share.reduce((sum, file) => sum + sizeOf(file), 0));
    expect(Math.max(...sizes) / Math.min(...sizes)).toBeLessThan(1.01);
    expect(shardOf([...files].reverse(), { index: 3, of: 7 }, sizeOf)).toEqual(shares[2]);
  });

  it('may be empty when there are more machines than files', () => {
    expect(lines('builds', '--shard', '9/9')).toEqual([]);
    expect(repository.dryfit('check', 'builds', '--shard', '9/9').status).toBe(0);
  });

  it.each(['0/4', '5/4', '4', 'a/b', '-1/3'])('says what is wrong with %s', (share) => {
    expect(repository.dryfit('check', `--shard=${share}`)).toMatchObject({
      status: 2,
      err: expect.stringContaining('--shard takes'),
    });
  });
});

describe('check --changed-since', () => {
  const files = (): string[] => lines('--changed-since', 'main').map(({ file }) => file);

  it('checks nothing when nothing changed', () => {
    expect(files()).toEqual([]);
    expect(repository.dryfit('check', '--changed-since', 'main').status).toBe(0);
  });

  it('checks the builds that use what changed, and no other', () => {
    repository.change('parts/club.dryfit.yaml', 'weight: 30 g', 'weight: 31 g');
    expect(files()).toEqual(['builds/tern.dryfit.yaml', 'parts/club.dryfit.yaml']);
  });

  it('checks what changed itself', () => {
    repository.change('builds/wren.dryfit.yaml', '700 g', '650 g');
    expect(files()).toEqual(['builds/wren.dryfit.yaml']);
  });
});

describe('a review of a parts file that changed', () => {
  const reviewed = (): string[] =>
    JSON.parse(repository.dryfit('review', 'main', '--format', 'json').out)
      .builds.map(({ file }: { file: string }) => file)
      .sort();
  const text = (name: string): string => sampleText(name);
  /** Who draws on a part, told from the texts: by its id, or by one that builds on it. */
  const users = (...ids: string[]): string[] =>
    sampleNames
      .filter((name) => /^dryfit: build/m.test(text(name)) && ids.some((id) => text(name).includes(`use: ${id}\n`)))
      .map((name) => `samples/${name}`)
      .sort();

  it.each([
    ['motors', 'gannet-2807-1300', /( {2}gannet-2807-1300:[\s\S]*?weight: )47 g/, '$148 g', ['gannet-2807-1300']],
    [
      'motors',
      'a part that others build on',
      /( {2}brunt-2207-1800:[\s\S]*?thread-depth: )4 mm/,
      '$14.2 mm',
      ['brunt-2207-1800', 'brunt-2207-2050'],
    ],
    ['radio', 'ear-24', /( {2}ear-24:\n)/, '$1    note-free: x\n', ['ear-24']],
  ] as const)('in %s shows every build that uses %s, and no other', (file, _, from, to, ids) => {
    const name = `samples/parts/${file}.dryfit.yaml`;
    const before = repository.read(name);
    repository.write(name, before.replace(from, to));
    expect(repository.read(name)).not.toBe(before);
    const expected = users(...ids);
    expect(expected.length).toBeGreaterThan(0);
    expect(reviewed()).toEqual(expected);
  });

  it('shows none when no build uses it, or when a word changed that means nothing to them', () => {
    repository.change('parts/club.dryfit.yaml', 'kv: 2400', 'kv: 2450');
    expect(reviewed()).toEqual([]);
    repository.reset();
    repository.change('parts/club.dryfit.yaml', 'parts:', '# what we fly\nparts:');
    expect(reviewed()).toEqual([]);
  });
});
