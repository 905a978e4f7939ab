/** The built command line as a process: output, exit codes, and what it says when it cannot run. Needs `npm run build`. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const empty = mkdtempSync(path.join(tmpdir(), 'dryfit-cli-'));
afterAll(() => rmSync(empty, { recursive: true, force: true }));

function dryfit(args: string[], cwd = root) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(root, 'dist/cli.cjs'), ...args], {
    cwd,
    encoding: 'utf8',
    timeout: 30_000,
  });
  return { status, stdout, stderr };
}

describe('dryfit check', () => {
  it('is content with the sound samples', () => {
    expect(dryfit(['check', 'samples/builds', '--fail-on', 'warning'])).toMatchObject({ status: 0, stderr: '' });
  });

  it('finds the faults of a faulty one and exits with 1', () => {
    const { status, stdout } = dryfit(['check', 'samples/faulty/first-five.dryfit.yaml']);
    expect(status).toBe(1);
    expect(stdout).toContain('battery-plug-differs');
  });

  it('gives JSON of the promised form, positions from 0, files from where it runs', () => {
    const { stdout } = dryfit(
      ['check', '--format', 'json', 'first-five.dryfit.yaml'],
      path.join(root, 'samples/faulty'),
    );
    const json = JSON.parse(stdout);
    expect(Object.keys(json)).toEqual(['files', 'checks', 'findings', 'notChecked']);
    expect(json.files).toBe(1);
    expect(Object.keys(json.checks)).toEqual(['ran', 'found', 'notChecked']);
    const plug = json.findings.find((finding: { check: string }) => finding.check === 'battery-plug-differs');
    expect(Object.keys(plug)).toEqual([
      'check',
      'severity',
      'danger',
      'accepted',
      'fingerprint',
      'message',
      'file',
      'range',
      'related',
      'fixes',
    ]);
    expect(plug.file).toBe('first-five.dryfit.yaml');
    expect(plug.range).toEqual({ start: { line: 18, character: 10 }, end: { line: 18, character: 14 } });
    expect(plug.related[0].file).toBe('../parts/packs.dryfit.yaml');
    for (const one of json.notChecked) expect(Object.keys(one)).toEqual(['check', 'file', 'missing']);
  });

  it('takes the bench it is told to take', () => {
    const other = path.join(empty, 'other.dryfit.yaml');
    writeFileSync(other, 'dryfit: bench\nradio:\n  link: longshot\n  band: 915 MHz\n');
    const { stdout } = dryfit(['check', 'samples/builds/ossel-5.dryfit.yaml', '--bench', other, '--format', 'json']);
    expect(JSON.parse(stdout).findings.map((finding: { check: string }) => finding.check)).toEqual(
      expect.arrayContaining(['link-family-differs', 'link-band-differs']),
    );
  });

  it.each([
    [['check', '.'], 'No build files here'],
    [['check', 'nowhere'], 'There is no file or folder nowhere'],
    [['check', 'x.txt'], 'no file or folder'],
    [['check', '--format', 'xml'], '--format takes'],
    [['check', '--frobnicate'], 'frobnicate'],
    [['fly'], 'There is no command'],
    [['card'], 'takes one build file'],
  ])('says why it could not run: %j', (args, words) => {
    const bare = path.join(empty, 'bare');
    mkdirSync(bare, { recursive: true });
    const { status, stdout, stderr } = dryfit(args, bare);
    expect(status).toBe(2);
    expect(stderr).toContain(words);
    expect(stderr).not.toContain('at Object.');
    expect(stdout).toBe('');
  });

  it('survives files that are no builds at all', () => {
    const folder = path.join(empty, 'odd');
    mkdirSync(folder, { recursive: true });
    writeFileSync(path.join(folder, 'empty.dryfit.yaml'), '');
    writeFileSync(path.join(folder, 'binary.dryfit.yaml'), Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 255, 254]));
    writeFileSync(path.join(folder, 'huge.dryfit.yaml'), `dryfit: build\nname: A\nnote: ${'x'.repeat(5_000_000)}\n`);
    writeFileSync(path.join(folder, 'half.dryfit.yaml'), 'dryfit: build\nname: A\nparts:\n  mot');
    const { status, stdout } = dryfit(['check', '--format', 'json', folder]);
    expect(status).toBe(1);
    const found = JSON.parse(stdout).findings.map(
      (finding: { check: string; file: string }) => `${finding.file.split('/').at(-1)} ${finding.check}`,
    );
    expect(found).toEqual(
      expect.arrayContaining([
        'empty.dryfit.yaml file-kind-missing',
        'binary.dryfit.yaml not-text',
        'huge.dryfit.yaml file-too-large',
      ]),
    );
    expect(found.some((one: string) => one.startsWith('half.dryfit.yaml'))).toBe(true);
  });
});

describe('dryfit card', () => {
  it('shows the figures with their ranges', () => {
    const { status, stdout } = dryfit(['card', 'samples/builds/ossel-5.dryfit.yaml']);
    expect(status).toBe(0);
    for (const words of [
      'Does it lift?',
      'How long does it fly?',
      'Does anything run hot?',
      'What does it weigh?',
      'typically',
    ])
      expect(stdout).toContain(words);
  });

  it('gives every figure as value, low, high, unit and basis', () => {
    const { stdout } = dryfit(['card', 'samples/builds/heron-7.dryfit.yaml', '--format', 'json']);
    const figures = JSON.parse(stdout).packs.main.figures;
    for (const name of [
      'weight-ready',
      'thrust-to-weight',
      'hover-throttle',
      'hover-current',
      'time-as-flown',
      'time-hovering',
      'full-current',
    ]) {
      expect(Object.keys(figures[name]), name).toEqual(['value', 'low', 'high', 'unit', 'basis']);
      expect(figures[name].low).toBeLessThanOrEqual(figures[name].value);
      expect(figures[name].high).toBeGreaterThanOrEqual(figures[name].value);
    }
    expect(figures['weight-ready'].unit).toBe('kg');
  });

  it('refuses what is no build', () => {
    expect(dryfit(['card', 'samples/bench.dryfit.yaml'])).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('is no build'),
    });
  });
});
