/** What a change does: fields found by the file's words, what follows from them, the table, the plot, and the lenses of the editor. */
import { describe, expect, it } from 'vitest';
import { analyse, craftsOf } from '../../server/src/analysis';
import { hover } from '../../server/src/language/hover';
import { whatIfLenses, whatIfLines } from '../../server/src/language/what-if';
import { evenRow, neighbourCapacities, niceStep } from '../../server/src/plan/nice-steps';
import { valueChanges, vary } from '../../server/src/plan/vary';
import { numberField } from '../../server/src/plan/vary-field';
import { chosenPack } from '../../server/src/plan/weight';
import { usualFigures, varyAsText, varyReport } from '../../server/src/report/vary-report';
import { niceTicks, varyAsSvg } from '../../server/src/report/vary-svg';
import { craftOf } from '../support/craft-of';
import { sampleUri, sampleWorkspace } from '../support/samples';
import { freestyle } from './builds';

function varied(text: string, words: string, values: readonly number[], holdWeight = false) {
  const { craft } = craftOf(text);
  const found = numberField(craft, words);
  if (!found.ok) throw new Error(found.why);
  const changes = valueChanges(
    found.field,
    values.map((value) => ({ value, label: String(value) })),
  );
  const request = {
    field: found.field.path,
    unit: '',
    scale: 1,
    shown: [...usualFigures],
    weightHeld: holdWeight,
    packFollows: false,
  };
  return varyReport(vary({ craft, pack: found.field.pack }, changes, holdWeight), request);
}

const column = (report: ReturnType<typeof varied>, name: string): number[] =>
  report.rows.map((row) => row.figures.get(name)!.value);
const rises = (numbers: readonly number[]): boolean => numbers.every((one, i) => i === 0 || one > numbers[i - 1]!);
const falls = (numbers: readonly number[]): boolean => rises([...numbers].reverse());

describe('finding a field', () => {
  const { craft } = craftOf(freestyle({ parts: 'extras:\n  skid:\n    weight: 3 g' }));

  it.each([
    ['battery.capacity', 'pack.capacity'],
    ['pack.capacity', 'pack.capacity'],
    ['packs.main.capacity', 'pack.capacity'],
    ['motors.kv', 'motors.kv'],
    ['parts.motors.kv', 'motors.kv'],
    ['flight.altitude', 'flight.altitude'],
    ['camera.weight', 'camera.weight'],
    ['extras.skid.weight', 'extras.skid.weight'],
    ['motors.count', 'motors.count'],
  ])('%s', (words, path) => {
    expect(numberField(craft, words)).toMatchObject({ ok: true, field: { path } });
  });

  it.each([
    ['propellers.size', 'no plain number'],
    ['packs.other.capacity', 'no pack `other`'],
    ['gps.weight', 'has no `gps`'],
    ['wings.span', 'no part of a build'],
    ['extras.tail.weight', 'nothing called `tail`'],
    ['motors', 'no field'],
    ['motors.thrust-table.current', 'no field'],
    ['__proto__.x', 'no part of a build'],
  ])('%s is refused in a sentence', (words, why) => {
    const found = numberField(craft, words);
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.why).toContain(why);
  });
});

describe('what follows from a change', () => {
  it('the weight of a pack follows its capacity unless it is held', () => {
    const free = varied(freestyle(), 'pack.capacity', [0.65, 1.3, 2.6]);
    expect(column(free, 'weight-ready')[2]! - column(free, 'weight-ready')[1]!).toBeCloseTo(0.205, 6);
    expect(column(free, 'weight-ready')[1]).toBe(free.base.figures.get('weight-ready')!.value);
    const held = varied(freestyle(), 'pack.capacity', [0.65, 1.3, 2.6], true);
    expect(new Set(column(held, 'weight-ready')).size).toBe(1);
    expect(column(held, 'time-as-flown')[2]!).toBeGreaterThan(column(free, 'time-as-flown')[2]!);
  });

  it('a weighed craft gets heavier by what the change adds', () => {
    const report = varied(freestyle({ flight: 'weighed: 640 g' }), 'pack.capacity', [1.3, 2.6]);
    expect(column(report, 'weight-ready')).toEqual([expect.closeTo(0.64, 9), expect.closeTo(0.845, 9)]);
  });

  it('a logged flight keeps the weight it was flown at', () => {
    const flight = 'logged:\n  minutes: 4.5 min\n  used: 1050 mAh';
    const report = varied(freestyle({ flight }), 'pack.capacity', [1.3, 2.6]);
    expect(report.rows[0]!.figures.get('time-as-flown')!.basis).toBe('calibrated');
    // Were the log taken to be of the heavy craft, that one would not draw more.
    const current = report.rows.map((row) => row.figures.get('hover-current')!.value);
    expect(current[1]!).toBeGreaterThan(1.35 * current[0]!);
  });

  it('a log of other motors is left out, and that is said', () => {
    const flight = 'logged:\n  minutes: 4.5 min\n  used: 1050 mAh';
    const report = varied(freestyle({ flight }), 'motors.kv', [1700, 1900]);
    expect(report.remarks.join()).toContain('logged flight is left out');
    expect(report.rows[0]!.figures.get('time-as-flown')!.basis).toBe('modelled');
  });

  it('a motor of the same size for another Kv keeps its copper', () => {
    const motors = 'resistance: 52 mOhm (maker)\nno-load-current: 1.3 A (maker)';
    const report = varied(freestyle({ motors }), 'motors.kv', [1500, 1800, 2100]);
    expect(rises(column(report, 'full-current'))).toBe(true);
    expect(column(report, 'full-current')[1]).toBe(report.base.figures.get('full-current')!.value);
  });
});

describe('through the whole path from a build file', () => {
  it('heavier never flies longer', () => {
    const report = varied(
      freestyle({ parts: 'action-camera:\n  weight: 0 g' }),
      'action-camera.weight',
      [0, 0.05, 0.1, 0.2, 0.4],
    );
    expect(falls(column(report, 'time-as-flown'))).toBe(true);
    expect(falls(column(report, 'time-hovering'))).toBe(true);
    expect(falls(column(report, 'thrust-to-weight'))).toBe(true);
  });

  it('more capacity at no weight never flies shorter', () => {
    const report = varied(freestyle(), 'battery.capacity', [0.85, 1.1, 1.3, 1.5, 1.8, 3], true);
    expect(rises(column(report, 'time-as-flown'))).toBe(true);
    expect(rises(column(report, 'time-hovering'))).toBe(true);
  });

  it('higher never hovers at less throttle', () => {
    const report = varied(freestyle(), 'flight.altitude', [0, 500, 1500, 3000, 4500]);
    expect(rises(column(report, 'hover-throttle'))).toBe(true);
    expect(falls(column(report, 'thrust-to-weight'))).toBe(true);
  });

  it('a worse pack sags more', () => {
    const report = varied(freestyle(), 'pack.cell-resistance', [0.002, 0.005, 0.01]);
    expect(falls(column(report, 'full-cell-voltage'))).toBe(true);
  });

  it('what cannot fly says so in its row', () => {
    const report = varied(freestyle(), 'camera.weight', [0.01, 8]);
    expect(report.rows[1]!.trouble).toBe('cannot hover');
    expect(varyAsText(report)).toContain('cannot hover');
  });
});

describe('the plot', () => {
  const svg = varyAsSvg(varied(freestyle(), 'pack.capacity', [0.85, 1.3, 1.8]));

  it('is one sound drawing with a band for every figure', () => {
    expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg"')).toBe(true);
    expect(svg.match(/<polygon/g)).toHaveLength(usualFigures.length);
    expect(svg.match(/<polyline/g)).toHaveLength(usualFigures.length);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    const opened = svg.match(/<(?!\/|\?)[a-z]+/g)!.length;
    expect(opened).toBe(svg.match(/<\/|\/>/g)!.length);
  });

  it('escapes what the builder calls things', () => {
    const odd = varyAsSvg(varied(freestyle().replace('Plain 5', '"<b>&"'), 'pack.capacity', [1, 2]));
    expect(odd).toContain('&lt;b&gt;&amp;');
    expect(odd).not.toContain('<b>');
  });

  it('draws a single value and a row in which nothing flies', () => {
    expect(varyAsSvg(varied(freestyle(), 'pack.capacity', [1.3]))).not.toMatch(/NaN|Infinity/);
    expect(varyAsSvg(varied(freestyle(), 'camera.weight', [8, 9]))).not.toMatch(/NaN|Infinity/);
  });
});

describe('steps', () => {
  it('are round', () => {
    expect([0.9, 1, 3, 7, 12, 99, 135].map(niceStep)).toEqual([0.5, 1, 2, 5, 10, 50, 100]);
    expect(niceTicks(0.93, 1.41, 5)).toEqual([1, 1.1, 1.2, 1.3, 1.4].map((value) => expect.closeTo(value, 9)));
  });

  it('end where they were told to, either way', () => {
    expect(evenRow(850, 1800, 400)).toEqual([850, 1250, 1650, 1800]);
    expect(evenRow(3, 1, 1)).toEqual([3, 2, 1]);
    expect(evenRow(5, 5, 1)).toEqual([5]);
    expect(evenRow(0, 1, 0)).toBeUndefined();
    expect(evenRow(0, 1e6, 1)).toBeUndefined();
    expect(evenRow(0, 1, Number.NaN)).toBeUndefined();
  });

  it('of packs are those that are sold', () => {
    expect(neighbourCapacities(1.3)).toEqual([1.1, 1.5]);
    expect(neighbourCapacities(40)).toEqual([36, 44]);
  });
});

describe('in the editor', () => {
  const workspace = sampleWorkspace();
  const file = workspace.get(sampleUri('builds/ossel-5.dryfit.yaml'))!;
  const craft = craftsOf(workspace, file)[0]!;

  it('a line stands above motors, propellers and each pack', () => {
    const lenses = whatIfLenses(file, [craft]);
    expect(lenses.map(({ span }) => file.text.slice(span.start, span.end))).toEqual([
      'motors',
      'propellers',
      'main',
      'light',
    ]);
    expect(lenses[2]!.title).toMatch(/^1100 mAh: −\d+ g.* min {2}\| {2}1500 mAh: \+\d+ g.*\+[\d.]+ min$/);
    for (const { title } of lenses) expect(title.length).toBeLessThan(140);
  });

  it('a number tells one step down and up, in its own unit', () => {
    expect(whatIfLines(craft, ['parts', 'action-camera', 'weight'])).toEqual([
      expect.stringMatching(/^- at \*\*93 g\*\*: −5 g/),
      expect.stringMatching(/^- at \*\*103 g\*\*: \+5 g/),
    ]);
  });

  it('the hover on a number carries them', () => {
    const at = file.text.indexOf('98 g') + 1;
    const shown = hover(workspace, analyse(workspace, file.uri)!, at)!.markdown;
    expect(shown).toContain('Weight of one');
    expect(shown).toContain('One step down or up');
    expect(shown).toContain('93 g');
  });

  it('is silent where nothing would change, and where there are no figures', () => {
    expect(whatIfLines(craft, ['parts', 'battery-lead', 'length'])).toEqual([]);
    expect(whatIfLines(craft, ['goals', 'weight'])).toEqual([]);
    const bare = craftOf('dryfit: build\nname: A\npacks:\n  main:\n    capacity: 1300 mAh\n').craft;
    expect(chosenPack(bare)?.name).toBe('main');
    expect(whatIfLines(bare, ['packs', 'main', 'capacity'])).toEqual([]);
  });
});
