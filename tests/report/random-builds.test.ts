/**
 * Random build files through text, facts, physics, card and every form of it: no exception, no number that is none, and the directions
 * that physics has. `DRYFIT_BUILDS=20000` gives the long run.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whatIfLenses } from '../../server/src/language/what-if';
import { type Card, figuresByName } from '../../server/src/report/card';
import { cardAsJson } from '../../server/src/report/card-json';
import { cardAsMarkdown, cardAtAGlance } from '../../server/src/report/card-markdown';
import { cardAsText } from '../../server/src/report/card-text';
import { cardOfText, craftOf } from '../support/craft-of';

const RUNS = Number(process.env.DRYFIT_BUILDS ?? 150);

const log = (least: number, most: number) =>
  fc.double({ min: Math.log(least), max: Math.log(most), noNaN: true }).map(Math.exp);
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const share = fc.integer({ min: 0, max: 100 });
const digits = (value: number): string => `${Number(value.toPrecision(4))}`;
const two = (value: number): string => String(value).padStart(2, '0');

interface Drawn {
  readonly craft: string | undefined;
  readonly count: number;
  readonly stator: readonly [number, number];
  readonly kv: number;
  readonly size: string;
  readonly cells: number;
  readonly parallel: number;
  readonly chemistry: string | undefined;
  readonly capacity: number;
  readonly discharge: number | undefined;
  readonly weight: number;
  readonly resistance: number | undefined;
  readonly lead: readonly [plug: string, gauge: number] | undefined;
  readonly altitude: number;
  readonly mix: readonly [number, number, number] | undefined;
  readonly punch: string | undefined;
  readonly row: readonly [throttle: number, thrust: number, volts: number, amps: number] | undefined;
  readonly log: readonly [minutes: number, used: number] | undefined;
  readonly weighed: number | undefined;
}

const size = fc.oneof(
  fc
    .tuple(log(1.3, 10), log(0.25, 1.2), fc.integer({ min: 2, max: 6 }))
    .map(([d, ratio, blades]) => `${d.toFixed(1)}x${Math.max(0.3, d * ratio).toFixed(1)}x${blades}`),
  fc
    .tuple(fc.integer({ min: 31, max: 76 }), fc.integer({ min: 2, max: 6 }))
    .map(([d, blades]) => `${d} mm, ${blades} blades`),
);

const drawn: fc.Arbitrary<Drawn> = fc.record({
  craft: maybe(
    fc.constantFrom('whoop-65', 'whoop-75', 'ducted-3', 'open-3', 'freestyle-5', 'race-5', 'long-range-7', 'lifter-10'),
  ),
  count: fc.constantFrom(3, 4, 6, 8),
  stator: fc.tuple(fc.integer({ min: 6, max: 42 }), fc.integer({ min: 2, max: 20 })),
  kv: log(300, 30_000),
  size,
  cells: fc.integer({ min: 1, max: 8 }),
  parallel: fc.constantFrom(1, 1, 2),
  chemistry: maybe(fc.constantFrom('LiPo', 'LiHV', 'Li-ion')),
  capacity: log(200, 12_000),
  discharge: maybe(log(5, 150)),
  weight: log(5, 3000),
  resistance: maybe(log(1, 100)),
  lead: maybe(fc.tuple(fc.constantFrom('A30', 'XT30', 'XT60', 'XT90'), fc.constantFrom(10, 12, 16, 20))),
  altitude: fc.integer({ min: -300, max: 4500 }),
  mix: maybe(fc.tuple(share, share, share)),
  punch: maybe(fc.constantFrom('60 % of full', '3 x weight', '20 x weight')),
  row: maybe(fc.tuple(fc.integer({ min: 1, max: 100 }), log(5, 3000), log(3, 34), log(0.2, 80))),
  log: maybe(fc.tuple(log(0.5, 60), log(50, 12_000))),
  weighed: maybe(log(15, 5000)),
});

function textOf(build: Drawn): string {
  const {
    craft,
    count,
    stator,
    kv,
    cells,
    parallel,
    chemistry,
    capacity,
    discharge,
    weight,
    resistance,
    lead,
    altitude,
    mix,
    punch,
    row,
    weighed,
  } = build;
  const lines = ['dryfit: build', 'name: Drawn'];
  if (craft) lines.push(`craft: ${craft}`);
  lines.push(
    'parts:',
    '  motors:',
    `    stator: ${two(stator[0])}${two(stator[1])}`,
    `    kv: ${Math.round(kv)}`,
    `    count: ${count}`,
  );
  if (row)
    lines.push(
      '    thrust-table:',
      `      - propeller: ${build.size}`,
      `        throttle: ${row[0]} %`,
      `        thrust: ${digits(row[1])} g`,
      `        voltage: ${digits(row[2])} V`,
      `        current: ${digits(row[3])} A`,
    );
  lines.push('  propellers:', `    size: ${build.size}`, '  camera:', `    weight: ${digits(weight)} g`);
  if (lead) lines.push('  battery-lead:', `    plug: ${lead[0]}`, `    wire: ${lead[1]} AWG`, '    length: 100 mm');
  lines.push(
    'packs:',
    '  main:',
    `    cells: ${cells}S${parallel > 1 ? `${parallel}P` : ''}`,
    `    capacity: ${Math.round(capacity)} mAh`,
  );
  if (chemistry) lines.push(`    chemistry: ${chemistry}`);
  if (discharge) lines.push(`    discharge: ${Math.round(discharge)} C`);
  if (resistance) lines.push(`    cell-resistance: ${digits(resistance)} mOhm`);
  lines.push('flight:', `  altitude: ${altitude} m`);
  if (mix) lines.push(`  hover: ${mix[0]} %`, `  cruise: ${mix[1]} %`, `  punch: ${mix[2]} %`);
  if (punch) lines.push(`  punch-thrust: ${punch}`);
  if (weighed) lines.push(`  weighed: ${digits(weighed)} g`);
  if (build.log)
    lines.push('  logged:', `    minutes: ${digits(build.log[0])} min`, `    used: ${digits(build.log[1])} mAh`);
  return `${lines.join('\n')}\n`;
}

const read = (build: Drawn): Card => cardOfText(textOf(build));
const figure = (build: Drawn, name: string): number => figuresByName(read(build).packs[0]!).get(name)?.value ?? 0;
/** Without measurements and levels by the weight, which would move with what is varied. */
const plain = (build: Drawn): Drawn => ({
  ...build,
  row: undefined,
  log: undefined,
  weighed: undefined,
  punch: undefined,
});
const SLACK = 1 + 1e-6;

describe('random builds', { timeout: 30_000 + RUNS * 100 }, () => {
  it('have figures inside their ranges in every form, or a sentence', () => {
    fc.assert(
      fc.property(drawn, (build) => {
        const card = read(build);
        const pack = card.packs[0]!;
        for (const one of figuresByName(pack).values()) {
          expect([one.value, one.low, one.high].every(Number.isFinite), one.name).toBe(true);
          expect(one.low <= one.value && one.value <= one.high, one.name).toBe(true);
        }
        expect(pack.headline).toMatch(/ready to fly/);
        const forms = [cardAsText(card), cardAsMarkdown(card), cardAtAGlance(card), JSON.stringify(cardAsJson(card))];
        for (const form of forms) expect(form).not.toMatch(/NaN|Infinity|undefined|\[object/);
        const { craft, workspace } = craftOf(textOf(build));
        for (const { title } of whatIfLenses(workspace.get(craft.file)!, [craft]))
          expect(title).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: RUNS },
    );
  });

  it('never fly longer for being heavier', () => {
    fc.assert(
      fc.property(drawn.map(plain), log(1.01, 2), (build, by) => {
        const heavier = { ...build, weight: build.weight * by };
        for (const name of ['time-as-flown', 'time-hovering'])
          expect(figure(heavier, name)).toBeLessThanOrEqual(figure(build, name) * SLACK);
      }),
      { numRuns: RUNS },
    );
  });

  it('never fly shorter for more capacity at the same weight', () => {
    fc.assert(
      fc.property(drawn.map(plain), log(1.01, 2), fc.integer({ min: 30, max: 3000 }), (build, by, weighed) => {
        const same = { ...build, weighed };
        const more = { ...same, capacity: build.capacity * by };
        for (const name of ['time-as-flown', 'time-hovering'])
          expect(figure(more, name) * SLACK).toBeGreaterThanOrEqual(figure(same, name));
      }),
      { numRuns: RUNS },
    );
  });

  it('never hover at less throttle for flying higher', () => {
    fc.assert(
      fc.property(drawn.map(plain), fc.integer({ min: 0, max: 2000 }), (build, by) => {
        const low = { ...build, altitude: 500 };
        const high = { ...build, altitude: 500 + by };
        const [below, above] = [figure(low, 'hover-throttle'), figure(high, 'hover-throttle')];
        if (above > 0) expect(above * SLACK).toBeGreaterThanOrEqual(below);
      }),
      { numRuns: RUNS },
    );
  });
});
