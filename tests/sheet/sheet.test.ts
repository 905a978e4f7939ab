/** The sheet says what the card says, draws whatever it is given, and lets nothing in a file become markup. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { dischargeCurve, throttleCurve } from '../../server/src/physics';
import { figuresFor, inputFor } from '../../server/src/plan/worked';
import { cardOf } from '../../server/src/report/card';
import { cardAsText } from '../../server/src/report/card-text';
import {
  drawSections,
  pictureFile,
  picturesOf,
  sheetPage,
  sheetPicture,
} from '../../server/src/report/sheet/draw/index';
import { sheetOf } from '../../server/src/report/sheet/view/make-view';
import type { SheetView } from '../../server/src/report/sheet/view/sheet-view';
import { craftOf } from '../support/craft-of';
import { faultyBuilds, sampleUri, sampleWorkspace, soundBuilds } from '../support/samples';

const workspace = sampleWorkspace();

function sampleSheet(name: string): { sheet: SheetView; card: string } {
  const analysis = analyse(workspace, sampleUri(name))!;
  const craft = analysis.crafts[0]!;
  return { sheet: sheetOf(craft, analysis), card: cardAsText(cardOf(craft, analysis)) };
}

const blocksOf = (sheet: SheetView) => sheet.sections.flatMap(({ blocks }) => blocks);

describe.each(soundBuilds)('%s', (name) => {
  const { sheet, card } = sampleSheet(name);
  const lines = card.split('\n');

  it('has every figure as the card has it, to the last digit', () => {
    const rows = blocksOf(sheet).flatMap((block) => (block.is === 'figures' ? block.rows : []));
    expect(rows.length).toBeGreaterThan(15);
    for (const { title, value, range } of rows) {
      const line = lines.find((one) => one.startsWith(`    ${title} `) && one.includes(value));
      expect(line, `${title} ${value}`).toBeDefined();
      if (range) expect(line).toContain(`typically ${range}`);
    }
  });

  it('leaves out no figure of the card', () => {
    const figures = lines.filter((line) => /^ {4}\S.*\d/.test(line) && line.includes('typically'));
    const page = sheetPage(sheet);
    expect(figures.length).toBeGreaterThan(10);
    for (const line of figures) {
      const title = /^ {4}(.*?) {2,}/.exec(line)![1]!;
      expect(page, line).toContain(`<td>${title.replaceAll("'", '&#39;')}</td>`);
    }
  });

  it('marks the hover and full throttle in the plots with the words of the card', () => {
    const plots = blocksOf(sheet).flatMap((block) =>
      block.is === 'picture' && block.picture.draw === 'plot' ? [block.picture.view] : [],
    );
    expect(plots.map(({ id }) => id)).toEqual(['thrust', 'current', 'efficiency', 'capacity', 'discharge']);
    for (const mark of plots.flatMap(({ marks }) => marks))
      for (const figure of mark.words.replace(/^[^:]*, [\d.]+ mAh: /, '').match(/\d[\d.]* (?:%|g\/W|mAh|min|A|V)/g) ??
        [])
        expect(card, mark.words).toContain(figure);
  });

  it('has all pictures, each with a title, a description and no id twice', () => {
    const page = sheetPage(sheet);
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    for (const id of ['plan', 'stack', 'mass', 'thrust', 'current', 'efficiency', 'capacity', 'discharge', 'ports']) {
      expect(ids).toContain(`${id}-title`);
      expect(ids).toContain(`${id}-description`);
      expect(ids).toContain(`${id}-numbers`);
    }
  });

  it('needs nothing from anywhere', () => {
    for (const text of [
      sheetPage(sheet),
      sheetPage(sheet, { forPaper: true }),
      sheetPicture(sheet),
      ...picturesOf(sheet).map(pictureFile),
    ]) {
      expect(text.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(
        /https?:|<script|@import|src=|NaN|undefined|Infinity/,
      );
      expect(text).not.toMatch(/ style="/);
    }
  });
});

it('draws the hover of the card on its own curve', () => {
  const { crafts } = analyse(workspace, sampleUri('builds/ossel-5.dryfit.yaml'))!;
  const [craft, pack] = [crafts[0]!, crafts[0]!.packs[0]!];
  const input = inputFor(craft, pack);
  const own = figuresFor(craft, pack)!;
  if (!input.ok || !own.hover.ok || !own.full.ok) throw new Error('the sample has no figures');
  const { throttle, thrust, packCurrent } = own.hover.value;
  const [at] = throttleCurve(input.input, [throttle.value]);
  expect(at!.thrust.value / thrust.value).toBeCloseTo(1, 4);
  expect(at!.thrust.low).toBeLessThan(at!.thrust.value);
  expect(at!.current.value / packCurrent.value).toBeCloseTo(1, 4);
  const [full] = dischargeCurve(input.input, [1]);
  expect(full!.full!.value / own.full.value.cellVoltage.value).toBeCloseTo(1, 9);
  expect(full!.full!.low / own.full.value.cellVoltage.low).toBeCloseTo(1, 3);
});

it.each(faultyBuilds)('%s: lists every finding with its line, gravest first', (name) => {
  const { sheet } = sampleSheet(name);
  const analysis = analyse(workspace, sampleUri(name))!;
  const rows = blocksOf(sheet).flatMap((block) => (block.is === 'findings' ? block.findings : []));
  expect(rows.map(({ message }) => message)).toEqual(analysis.findings.map(({ message }) => message));
  expect(
    rows.every(({ where, spot }) => /^line \d+$/.test(where) && spot !== undefined && sheet.places.has(spot)),
  ).toBe(true);
});

it('marks re-pinned wires', () => {
  const { sheet } = sampleSheet('faulty/mixed-stack.dryfit.yaml');
  const harness = pictureFile(picturesOf(sheet).find(({ id }) => id === 'harness')!);
  expect(harness.match(/data-moved="/g)?.length).toBe(8);
  expect(harness).toContain('re-pin');
  expect(harness).toContain('data-moved="1-2"');
});

it('shows a rail that is asked for too much', () => {
  const { sheet } = sheetOfText(`
  flight-controller:
    regulators:
      5V:
        current: 0.2 A
  camera:
    system: analog
    supply: 5 V
    current: 0.3 A
wiring:
  camera:
    power: 5V`);
  const rails = pictureFile(picturesOf(sheet).find(({ id }) => id === 'rails')!);
  expect(rails).toContain('300 mA of 200 mA, 100 mA too much');
  expect(rails).toContain('class="over"');
});

it('tells the order as the build says it, or where it is proved', () => {
  const words = blocksOf(sampleSheet('builds/ossel-5.dryfit.yaml').sheet)
    .flatMap((block) => (block.is === 'words' ? block.lines : []))
    .join(' ');
  expect(words).toContain('dryfit order ossel-5.dryfit.yaml');
});

const nasty = '"><script>alert(1)</script>&\u0001`';

it.each([
  '',
  'dryfit: build\n',
  'dryfit: build\nname: x\nparts:\n  frame:\n    body: 100x40 mm\n',
  'dryfit: build\npacks:\n  main:\n    cells: 4S\n',
])('draws what little there is of %j', (text) => {
  const { workspace: own } = craftOf(`dryfit: build\n`);
  own.set('file:///club/craft.dryfit.yaml', text);
  const analysis = analyse(own, 'file:///club/craft.dryfit.yaml')!;
  for (const craft of analysis.crafts) expect(sheetPage(sheetOf(craft, analysis))).toContain('</html>');
});

it('lets nothing in a file become markup', () => {
  const { sheet } = sheetOfText(
    `
  frame:
    use: ${JSON.stringify(nasty)}
    wheelbase: 225 mm
    material: ${JSON.stringify(nasty)}
  extras:
    ${JSON.stringify(nasty)}:
      weight: 3 g
packs:
  ${JSON.stringify(nasty)}:
    cells: 6S
    capacity: 1300 mAh`,
    JSON.stringify(nasty),
  );
  const sections = drawSections(sheet, true).map(({ markup }) => markup);
  for (const text of [sheetPage(sheet), sheetPicture(sheet), sections.join('')]) {
    expect(text).not.toContain('<script');
    expect(text).not.toContain('\u0001');
    expect(text).toContain('&#34;&#62;&#60;script');
  }
});

function sheetOfText(rest: string, name = 'Small'): { sheet: SheetView } {
  const { workspace: own } = craftOf(`dryfit: build\nname: ${name}\nparts:${rest}\n`);
  const analysis = analyse(own, 'file:///club/craft.dryfit.yaml')!;
  return { sheet: sheetOf(analysis.crafts[0]!, analysis) };
}
