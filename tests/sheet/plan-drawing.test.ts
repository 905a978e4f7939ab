/** The drawing from above is measured with its own numbers: distances in the SVG are those the engine works out, to a tenth of a millimetre. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Analysis, analyse } from '../../server/src/analysis';
import { motorLayout, neighbourGaps } from '../../server/src/plan/motor-layout';
import { propellerGap } from '../../server/src/plan/propeller-gap';
import { pictureMarkup } from '../../server/src/report/sheet/draw/picture';
import { planDrawing, stackDrawing } from '../../server/src/report/sheet/draw/plan-drawing';
import { fitView } from '../../server/src/report/sheet/view/fit-view';
import { collectSpots } from '../../server/src/report/sheet/view/spots';
import { craftOf } from '../support/craft-of';
import { sampleUri, sampleWorkspace, soundBuilds } from '../support/samples';
import { attributesOf, circlesOf } from './measure';

const workspace = sampleWorkspace();
const uri = 'file:///club/craft.dryfit.yaml';

const tenth = 0.1;

function drawn(analysis: Analysis, linked = false): string {
  const craft = analysis.crafts[0]!;
  const view = fitView(craft, craft.packs[0], analysis, collectSpots(craft.file));
  return pictureMarkup(planDrawing(view, linked)!).markup;
}

const text = (frame: string, size: string): string => `dryfit: build
name: Measured
parts:
  frame:
${frame
  .split('\n')
  .map((line) => `    ${line}`)
  .join('\n')}
  propellers:
    size: ${size}
`;

function sheetOf(build: string): { svg: string; analysis: Analysis } {
  const { workspace: own } = craftOf(build);
  const analysis = analyse(own, uri)!;
  return { svg: drawn(analysis), analysis };
}

/** mm between the tips of the two nearest discs, as drawn. */
function measuredGap(svg: string): number {
  const discs = circlesOf(svg, 'propeller');
  const apart = discs.flatMap((one, i) =>
    discs.slice(i + 1).map((other) => Math.hypot(one.x - other.x, one.y - other.y) - one.r - other.r),
  );
  return Math.min(...apart);
}

describe.each(soundBuilds)('%s', (name) => {
  const analysis = analyse(workspace, sampleUri(name))!;
  const craft = analysis.crafts[0]!;
  const svg = drawn(analysis);

  it('has the gap between tips that the engine works out', () => {
    expect(Math.abs(measuredGap(svg) - propellerGap(craft)!.gap * 1000)).toBeLessThan(tenth);
  });

  it('says the gap in words as it is drawn', () => {
    expect(svg).toContain(`gap ${measuredGap(svg).toFixed(1)} mm`);
  });

  it('has discs of the size of the propellers and motors where they are', () => {
    const discs = circlesOf(svg, 'propeller');
    const layout = motorLayout(craft)!;
    expect(discs).toHaveLength(layout.motors.length);
    for (const [i, disc] of discs.entries()) {
      expect(Math.abs(2 * disc.r - craft.roles.propellers!.size!.value.diameter * 1000)).toBeLessThan(tenth);
      expect(Math.abs(disc.x - layout.motors[i]!.right * 1000)).toBeLessThan(tenth);
      expect(Math.abs(-disc.y - layout.motors[i]!.forward * 1000)).toBeLessThan(tenth);
    }
  });

  it('draws the pack as long and wide as it is', () => {
    const pack = attributesOf(svg, 'rect', 'box pack')[0]!;
    const size = craft.packs[0]!.facts.outside!.value;
    expect(Math.abs(Number(pack.height) - size.length * 1000)).toBeLessThan(tenth);
    expect(Math.abs(Number(pack.width) - size.width * 1000)).toBeLessThan(tenth);
  });

  it('draws hole patterns to scale', () => {
    const said = craft.roles.frame!['stack-mounts']!.items.map(({ value }) => value.width * 1000);
    const widths = attributesOf(svg, 'rect', 'pattern').map(({ width }) => Number(width));
    for (const width of said) expect(widths.some((drawnWidth) => Math.abs(drawnWidth - width) < tenth)).toBe(true);
  });

  it('has a scale bar as long as it says', () => {
    const bars = attributesOf(svg, 'rect', 'bar').map(({ width }) => Number(width));
    const said = Number(/data-scale-bar-mm="(\d+)"/.exec(svg)![1]);
    expect(Math.abs(bars.reduce((sum, one) => sum + one, 0) - said)).toBeLessThan(tenth);
  });
});

it('shows how far propellers overlap', () => {
  const { svg, analysis } = sheetOf(text('wheelbase: 175 mm\ngeometry: x', '5.1x3.6x3'));
  const overlap = -propellerGap(analysis.crafts[0]!)!.gap * 1000;
  expect(overlap).toBeGreaterThan(5);
  expect(Math.abs(-measuredGap(svg) - overlap)).toBeLessThan(tenth);
  expect(svg).toContain(`overlap ${overlap.toFixed(1)} mm`);
  const lenses = [...svg.matchAll(/data-overlap-mm="([\d.]+)"/g)].map((match) => Number(match[1]));
  expect(lenses).toHaveLength(4);
  for (const lens of lenses) expect(Math.abs(lens - overlap)).toBeLessThan(tenth);
  expect(svg).toContain('Clash: Propellers reach into one another');
  // The lens is as wide as the overlap: its corners and arcs lie on both discs.
  const [, x1, y1, x2, y2] = /class="overlap"[^>]*d="M([-\d.]+) ([-\d.]+)A[\d.]+ [\d.]+ 0 0 1 ([-\d.]+) ([-\d.]+)A/
    .exec(svg)!
    .map(Number) as [number, number, number, number, number];
  const discs = circlesOf(svg, 'propeller');
  const on = (x: number, y: number): number =>
    discs.filter((disc) => Math.abs(Math.hypot(disc.x - x, disc.y - y) - disc.r) < tenth).length;
  expect(on(x1, y1)).toBe(2);
  expect(on(x2, y2)).toBe(2);
});

it('draws no lens where the discs stay apart', () => {
  expect(sheetOf(text('wheelbase: 225 mm\ngeometry: x', '5.1x3.6x3')).svg).not.toContain('class="overlap"');
});

it('agrees with the engine for any positions', () => {
  const metres = fc.integer({ min: -300, max: 300 });
  fc.assert(
    fc.property(fc.array(fc.tuple(metres, metres), { minLength: 2, maxLength: 8 }), (places) => {
      const words = places.map(
        ([f, r]) =>
          `  - ${Math.abs(f)} mm ${f < 0 ? 'back' : 'forward'}, ${Math.abs(r)} mm ${r < 0 ? 'left' : 'right'}`,
      );
      const { craft } = craftOf(text(`motor-positions:\n${words.join('\n')}`, '3x2x3'));
      const gaps = neighbourGaps(motorLayout(craft)!.motors, 3 * 0.0254);
      expect(Math.min(...gaps.map(({ gap }) => gap))).toBeCloseTo(propellerGap(craft)!.gap, 9);
    }),
    { numRuns: 200 },
  );
});

it.each([
  ['plus', 4],
  ['hexa', 6],
])('knows where the motors of a %s are', (geometry, count) => {
  const { svg, analysis } = sheetOf(text(`wheelbase: 400 mm\ngeometry: ${geometry}`, '7x3.5x3'));
  expect(circlesOf(svg, 'propeller')).toHaveLength(count);
  expect(Math.abs(measuredGap(svg) - propellerGap(analysis.crafts[0]!)!.gap * 1000)).toBeLessThan(tenth);
});

it('draws no motors where the geometry does not tell their places, and says what to add', () => {
  const { workspace: own } = craftOf(text('wheelbase: 225 mm\ngeometry: dead-cat', '5.1x3.6x3'));
  const analysis = analyse(own, uri)!;
  const view = fitView(analysis.crafts[0]!, undefined, analysis, collectSpots(uri));
  expect(view.motors).toEqual([]);
  expect(view.wanting.join()).toContain('motor-positions');
  expect(planDrawing(view, false)).toBeUndefined();
});

it('marks the things a clash is between, and nothing else', () => {
  const analysis = analyse(workspace, sampleUri('faulty/first-five.dryfit.yaml'))!;
  const svg = drawn(analysis);
  expect(svg).toContain('Clash: Propeller does not sit on the motor');
  expect(attributesOf(svg, 'circle', 'propeller clash').length).toBe(4);
  expect(attributesOf(svg, 'rect', 'box pack').every((rect) => !String(rect.class).includes('clash'))).toBe(true);
});

it('draws the boards alone, larger, with the same holes', () => {
  const analysis = analyse(workspace, sampleUri('builds/ossel-5.dryfit.yaml'))!;
  const craft = analysis.crafts[0]!;
  const view = fitView(craft, craft.packs[0], analysis, collectSpots(craft.file));
  const svg = pictureMarkup(stackDrawing(view, false)!).markup;
  expect(attributesOf(svg, 'rect', 'pattern').map(({ width }) => Number(width))).toContain(30.5);
  expect(circlesOf(svg, 'propeller')).toEqual([]);
});

it('keeps whatever a file says from becoming markup', () => {
  const { svg } = sheetOf(
    text('wheelbase: 225 mm\ngeometry: x', '5.1x3.6x3').replace('name: Measured', 'name: <script>alert(1)</script>'),
  );
  expect(svg).not.toContain('<script');
});
