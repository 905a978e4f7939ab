/** `dryfit card`, `vary` and `point` as processes: output, forms, exit codes. Needs `npm run build`. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-figures-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function dryfit(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(root, 'dist/cli.cjs'), ...args], {
    cwd: root,
    encoding: 'utf8',
    timeout: 30_000,
  });
  return { status, stdout, stderr };
}

const ossel = 'samples/builds/ossel-5.dryfit.yaml';

describe('dryfit card', () => {
  it('begins with the decisive line and keeps the questions in order', () => {
    const { status, stdout } = dryfit('card', ossel);
    expect(status).toBe(0);
    expect(stdout.split('\n')[2]).toMatch(
      /^With the pack "main": \d+ g ready to fly · [\d.]+ A hovering · [\d.]+ min as you fly it$/,
    );
    const at = [
      'Does it lift?',
      'How long does it fly?',
      'What does each way of flying take?',
      'Does anything run hot?',
      'What does it weigh?',
      'How sure is this?',
    ].map((question) => stdout.indexOf(question));
    expect(at.every((place, i) => place > (at[i - 1] ?? 0))).toBe(true);
  });

  it('shows another pack whole when asked', () => {
    expect(dryfit('card', ossel, '--pack', 'light').stdout.split('\n')[2]).toContain('With the pack "light"');
    expect(dryfit('card', ossel, '--pack', 'none')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('has no pack `none`. It has main, light.'),
    });
  });

  it('gives every sample a card without a stain', () => {
    for (const name of ['dart-5', 'heron-7', 'nook-25', 'ossel-5', 'pip-75', 'sliver-3']) {
      const { status, stdout } = dryfit('card', `samples/builds/${name}.dryfit.yaml`);
      expect(status, name).toBe(0);
      expect(stdout, name).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it('names units that are SI or accepted beside it', () => {
    const json = JSON.parse(dryfit('card', ossel, '--format', 'json').stdout);
    const units = new Set(
      Object.values(json.packs.main.figures as Record<string, { unit: string }>).map(({ unit }) => unit),
    );
    expect([...units].sort()).toEqual([
      '1',
      '1/s',
      'A',
      'A·h',
      'K',
      'N',
      'N/W',
      'N/m²',
      'V',
      'W',
      'W·h',
      'kg',
      'm',
      'm/s',
      's',
    ]);
  });
});

describe('dryfit vary', () => {
  it('tells what other capacities would change, with a plot', () => {
    const plot = path.join(folder, 'plot.svg');
    const { status, stdout, stderr } = dryfit(
      'vary',
      ossel,
      '--field',
      'battery.capacity',
      '--from',
      '850 mAh',
      '--to',
      '1800 mAh',
      '--svg',
      plot,
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toMatch(/as it is\s+659 g/);
    expect(stdout).toMatch(/1800 mAh\s+739 g/);
    expect(stdout).toContain("The pack's weight follows its capacity");
    expect(readFileSync(plot, 'utf8')).toMatch(/^<svg .*<\/svg>\n$/s);
  });

  it('gives JSON of the promised form, by step, with the weight held', () => {
    const { stdout } = dryfit(
      'vary',
      ossel,
      '--field',
      'pack.capacity',
      '--from',
      '1000 mAh',
      '--to',
      '1.5 Ah',
      '--step',
      '250 mAh',
      '--hold',
      'weight',
      '--format',
      'json',
      '--show',
      'weight-ready,time-as-flown',
    );
    const json = JSON.parse(stdout);
    expect(Object.keys(json)).toEqual(['name', 'pack', 'field', 'unit', 'as-it-is', 'rows', 'remarks']);
    expect(json.rows.map((row: { value: number }) => row.value)).toEqual([1000, 1250, 1500]);
    for (const row of json.rows) {
      expect(Object.keys(row)).toEqual(['label', 'value', 'trouble', 'figures']);
      expect(Object.keys(row.figures)).toEqual(['weight-ready', 'time-as-flown']);
      expect(Object.keys(row.figures['weight-ready'])).toEqual(['value', 'low', 'high', 'unit', 'basis']);
      expect(row.figures['weight-ready'].value).toBe(json['as-it-is'].figures['weight-ready'].value);
    }
  });

  it('compares parts of a role', () => {
    const { status, stdout } = dryfit(
      'vary',
      ossel,
      '--field',
      'motors',
      '--parts',
      'brunt-2207-1800, brunt-2207-2050',
    );
    expect(status).toBe(0);
    expect(stdout).toContain('brunt-2207-2050');
    const packs = dryfit('vary', ossel, '--field', 'pack', '--parts', 'marl-6s-1100,marl-6s-1300', '--format', 'svg');
    expect(packs.stdout).toContain('marl-6s-1100');
  });

  it.each([
    [[ossel], 'Say what to vary'],
    [[ossel, '--field', 'motors.kv'], 'Say --from and --to'],
    [[ossel, '--field', 'motors.kv', '--from', '1500', '--to', 'fast'], '--to: `fast` is not a motor constant'],
    [[ossel, '--field', 'pack.capacity', '--from', '850', '--to', '900 mAh'], '--from: `850` has no unit'],
    [[ossel, '--field', 'pack.capacity', '--from', '1 mAh', '--to', '9000 mAh', '--step', '1 mAh'], 'at most 200 rows'],
    [[ossel, '--field', 'propellers.size', '--from', '1', '--to', '2'], 'no plain number'],
    [[ossel, '--field', 'motors', '--parts', 'nobody'], 'No parts file of this workspace has `nobody`'],
    [[ossel, '--field', 'motors', '--parts', 'marl-6s-1300'], 'a motor is wanted here'],
    [[ossel, '--field', 'motors.kv', '--from', '1', '--to', '2', '--hold', 'speed'], '--hold takes weight'],
    [[ossel, '--field', 'motors.kv', '--from', '1500', '--to', '1600', '--show', 'beauty'], 'no figure `beauty`'],
    [[ossel, '--field', 'motors.kv', '--from', '1500', '--to', '1600', '--svg', 'nowhere/at/all.svg'], 'Cannot write'],
    [['samples/bench.dryfit.yaml', '--field', 'motors.kv'], 'is no build'],
    [[], 'takes one build file'],
  ])('says why it could not run: %j', (args, words) => {
    const { status, stdout, stderr } = dryfit('vary', ...args);
    expect(status).toBe(2);
    expect(stderr).toContain(words);
    expect(stderr).not.toContain('unexpectedly');
    expect(stdout).toBe('');
  });

  it('has a row for what cannot fly', () => {
    const build = path.join(folder, 'heavy.dryfit.yaml');
    writeFileSync(
      build,
      'dryfit: build\nname: Heavy\nparts:\n  motors:\n    stator: 2207\n    kv: 1800\n  propellers:\n    size: 5x4x3\n  extras:\n    brick:\n      weight: 10 g\npacks:\n  main:\n    cells: 6S\n    capacity: 1300 mAh\n',
    );
    const { status, stdout } = dryfit(
      'vary',
      build,
      '--field',
      'extras.brick.weight',
      '--from',
      '0 g',
      '--to',
      '8 kg',
      '--step',
      '4 kg',
    );
    expect(status).toBe(0);
    expect(stdout).toContain('cannot hover');
  });
});

describe('dryfit point', () => {
  const motor = ['--stator', '2207', '--kv', '1750', '--propeller', '5.1x3.6x3', '--volts', '22.2'];
  const point = (...more: string[]) => dryfit('point', ...motor, ...more);

  it('gives each figure as value, low, high and unit', () => {
    const { status, stdout } = point('--throttle', '60%', '--format', 'json');
    expect(status).toBe(0);
    const json = JSON.parse(stdout);
    for (const [name, unit] of Object.entries({
      thrust: 'N',
      current: 'A',
      'motor-current': 'A',
      rpm: 'rpm',
      power: 'W',
      'tip-mach': '1',
    })) {
      expect(Object.keys(json[name]), name).toEqual(['value', 'low', 'high', 'unit']);
      expect(json[name].unit).toBe(unit);
      expect(json[name].low).toBeLessThanOrEqual(json[name].value);
      expect(json[name].high).toBeGreaterThanOrEqual(json[name].value);
    }
    expect(json.power.value).toBeCloseTo(22.2 * json.current.value, 3);
  });

  it('answers by thrust as by throttle', () => {
    const by = JSON.parse(point('--throttle', '60 %', '--format', 'json').stdout);
    const back = JSON.parse(point('--thrust', `${by.thrust.value} N`, '--format', 'json').stdout);
    expect(back.throttle.value).toBeCloseTo(0.6, 4);
    expect(back.current.value).toBeCloseTo(by.current.value, 4);
  });

  it('reads what was measured, the height and the temperature', () => {
    const read = (...more: string[]) => JSON.parse(point('--thrust', '400 g', '--format', 'json', ...more).stdout);
    const plain = read();
    expect(plain.thrust.value).toBeCloseTo(3.92266, 5);
    expect(read('--altitude', '2500 m').rpm.value).toBeGreaterThan(plain.rpm.value);
    expect(read('--temperature', '35 C').rpm.value).toBeGreaterThan(plain.rpm.value);
    const known = read('--resistance', '60 mOhm', '--no-load', '1.4 A');
    expect(known.current.high / known.current.low).toBeLessThan(plain.current.high / plain.current.low);
    expect(read('--duct').power.value).toBeGreaterThan(plain.power.value);
  });

  it('says an impossible point in a sentence and exits with 1', () => {
    const { status, stdout } = point('--thrust', '40 N');
    expect(status).toBe(1);
    expect(stdout).toMatch(/^This motor cannot reach that thrust: .+\.\n$/);
    expect(point('--thrust', '40 N', '--format', 'json')).toMatchObject({
      status: 1,
      stdout: expect.stringContaining('"impossible": "cannot-reach"'),
    });
    expect(
      dryfit('point', '--stator', '2207', '--kv', '30', '--propeller', '5x4x3', '--volts', '1', '--throttle', '1 %')
        .status,
    ).toBe(1);
  });

  it.each([
    [[], 'Say --stator, --kv, --propeller, --volts'],
    [motor, 'either --throttle or --thrust'],
    [[...motor, '--throttle', '50 %', '--thrust', '1 N'], 'either --throttle or --thrust'],
    [[...motor, '--throttle', '150 %'], 'at most 100 %'],
    [[...motor, '--throttle', '50'], '--throttle'],
    [[...motor, '--thrust', '4'], '--thrust'],
    [
      ['--stator', '22', '--kv', '1750', '--propeller', '5x4x3', '--volts', '22', '--throttle', '50 %'],
      '--stator: `22` is not a stator size',
    ],
    [
      ['--stator', '2207', '--kv', '1750', '--propeller', '51433', '--volts', '22', '--throttle', '50 %'],
      'read in more than one way',
    ],
    [[...motor, '--throttle', '50 %', '--wind', '3'], 'wind'],
    [[...motor, '--throttle', '50 %', '--format', 'xml'], '--format takes'],
  ])('says why it could not run: %j', (args, words) => {
    const { status, stdout, stderr } = dryfit('point', ...args);
    expect(status).toBe(2);
    expect(stderr).toContain(words);
    expect(stdout).toBe('');
  });
});
