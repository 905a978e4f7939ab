import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CraftInput, figures, operatingPoint, values } from '../../server/src/physics';
import { numbersIn } from '../support/numbers-in';

/** `PHYSICS_RUNS=20000` gives the long run. */
const RUNS = Number(process.env.PHYSICS_RUNS ?? 500);

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const log = (min: number, max: number) => real(Math.log(min), Math.log(max)).map(Math.exp);
const share = real(0, 1);
const known = (min: number, max: number) =>
  fc.option(
    fc.record({ value: log(min, max), trust: fc.constantFrom('measured', 'maker', 'seller', 'estimate' as const) }),
    { nil: undefined },
  );

const row = fc.record({
  throttle: fc.option(share, { nil: undefined }),
  thrust: log(0.02, 30),
  voltage: log(2, 30),
  current: fc.option(log(0.05, 80), { nil: undefined }),
  rpm: fc.option(log(1000, 60_000), { nil: undefined }),
});

const craft: fc.Arbitrary<CraftInput> = fc.record({
  motors: fc.record({
    count: fc.constantFrom(3, 4, 6, 8),
    statorDiameterMm: log(6, 45),
    statorHeightMm: log(1.5, 20),
    kv: log(200, 30_000),
    coaxial: fc.boolean(),
    resistance: known(0.005, 2),
    noLoadCurrent: known(0.02, 5),
  }),
  propeller: fc.record({
    diameter: log(0.025, 0.3),
    pitch: log(0.01, 0.3),
    blades: fc.integer({ min: 2, max: 6 }),
    ducted: fc.boolean(),
    ct: known(0.03, 0.4),
    cp: known(0.01, 0.3),
  }),
  pack: fc.record({
    cells: fc.integer({ min: 1, max: 8 }),
    chemistry: fc.constantFrom('lipo', 'lihv', 'li-ion' as const),
    capacity: log(0.1, 20),
    dischargeRating: log(3, 200),
    resistance: known(0.002, 0.5),
    landingVoltage: fc.option(real(2.5, 3.8), { nil: undefined }),
  }),
  mass: log(0.015, 8).map((value) => ({ value, low: value * 0.97, high: value * 1.03 })),
  air: fc.record({ altitude: real(-300, 5000), temperature: fc.option(real(250, 318), { nil: undefined }) }),
  auxiliaryPower: log(0.5, 40),
  mix: fc.record({
    hover: share,
    cruise: share,
    punch: share,
    cruiseThrust: real(1, 3),
    punchThrust: share,
    reserve: real(0, 0.5),
  }),
  thrustTable: fc.option(fc.array(row, { maxLength: 4 }), { nil: undefined }),
  log: fc.option(
    fc.record({
      flown: fc.constantFrom('hovering', 'as-flown' as const),
      duration: log(30, 4000),
      used: log(0.05, 20),
      hoverThrottle: fc.option(share, { nil: undefined }),
    }),
    { nil: undefined },
  ),
});

/** Without measurements, whose weight would move with the thing that is varied. */
const nameplate = craft.map(({ thrustTable: _rows, log: _log, ...rest }): CraftInput => rest);

/** Paths of numbers that are not finite. */
const holes = (x: unknown): readonly string[] =>
  numbersIn(x).flatMap(([path, number]) => (Number.isFinite(number) ? [] : [path]));

const flown = (input: CraftInput): number => {
  const v = values(input).asFlown;
  return v.ok ? v.value.minutes : 0;
};

const hovering = (input: CraftInput): number => {
  const v = values(input).hovering;
  return v.ok ? v.value.minutes : 0;
};

const SLACK = 1 + 1e-6;

describe('random builds', { timeout: 30_000 + RUNS * 20 }, () => {
  it('always have finite figures inside their ranges, or a typed reason', () => {
    fc.assert(
      fc.property(craft, (input) => {
        const f = figures(input);
        expect(holes(f)).toEqual([]);
        if (f.asFlown.ok) {
          // What is worked out when it is looked at was looked at.
          expect(numbersIn(f).map(([path]) => path)).toContain('.asFlown.value.minutes.high');
          const { minutes } = f.asFlown.value;
          expect(minutes.low <= minutes.value && minutes.value <= minutes.high && minutes.low >= 0).toBe(true);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('survive any number in any field', () => {
    const any = fc.oneof(
      fc.double(),
      fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e-300, 1e300),
    );
    const anything = fc.record({
      motors: fc.record({
        count: any,
        statorDiameterMm: any,
        statorHeightMm: any,
        kv: any,
        resistance: fc.record({ value: any, sigma: any }),
      }),
      propeller: fc.record({ diameter: any, pitch: any, blades: any, ct: fc.record({ value: any }) }),
      pack: fc.record({
        cells: any,
        chemistry: fc.constant('lipo' as const),
        capacity: any,
        dischargeRating: any,
        landingVoltage: any,
        capacitySigma: any,
      }),
      mass: fc.record({ value: any, low: any, high: any }),
      air: fc.record({ altitude: any, temperature: any }),
      auxiliaryPower: any,
      mix: fc.record({ hover: any, cruise: any, punch: any, cruiseThrust: any, punchThrust: any, reserve: any }),
    });
    const mixed = fc
      .tuple(nameplate, anything, fc.integer({ min: 0, max: 6 }))
      .map(([sound, odd, which]): CraftInput => {
        const key = (['motors', 'propeller', 'pack', 'mass', 'air', 'auxiliaryPower', 'mix'] as const)[which]!;
        const there = sound[key];
        const value = typeof there === 'object' ? oneFieldOf(there, odd[key] as object) : odd[key];
        return { ...sound, [key]: value } as CraftInput;
      });
    fc.assert(
      fc.property(mixed, (input) => {
        expect(holes(figures(input))).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  });

  it('never fly longer for being heavier', () => {
    fc.assert(
      fc.property(nameplate, real(1, 1.5), (input, by) => {
        const mass = { value: input.mass.value * by, low: input.mass.low * by, high: input.mass.high * by };
        expect(flown({ ...input, mass })).toBeLessThanOrEqual(flown(input) * SLACK);
        expect(hovering({ ...input, mass })).toBeLessThanOrEqual(hovering(input) * SLACK);
      }),
      { numRuns: RUNS },
    );
  });

  it('never fly shorter for more capacity at no weight', () => {
    fc.assert(
      fc.property(nameplate, real(1, 1.5), (input, by) => {
        const pack = { ...input.pack, capacity: input.pack.capacity * by };
        expect(flown({ ...input, pack }) * SLACK).toBeGreaterThanOrEqual(flown(input));
        expect(hovering({ ...input, pack }) * SLACK).toBeGreaterThanOrEqual(hovering(input));
      }),
      { numRuns: RUNS },
    );
  });

  it('never hover at less throttle for flying higher', () => {
    fc.assert(
      fc.property(nameplate, real(0, 2500), (input, by) => {
        const low = values({ ...input, air: { altitude: 500 } }).hover;
        const high = values({ ...input, air: { altitude: 500 + by } }).hover;
        if (low.ok && high.ok) expect(high.value.throttle * SLACK).toBeGreaterThanOrEqual(low.value.throttle);
        if (!low.ok) expect(high.ok).toBe(false);
      }),
      { numRuns: RUNS },
    );
  });

  it('give finite points on a stand', () => {
    fc.assert(
      fc.property(craft, log(1, 60), share, (input, voltage, throttle) => {
        const { count: _count, coaxial: _coaxial, ...motor } = input.motors;
        expect(holes(operatingPoint({ motor, propeller: input.propeller, voltage, at: { throttle } }))).toEqual([]);
        expect(
          holes(operatingPoint({ motor, propeller: input.propeller, voltage, at: { thrust: 20 * throttle } })),
        ).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  });
});

/** `sound` with the first odd field of `odd` in place of its own. */
function oneFieldOf(sound: object, odd: object): object {
  const names = Object.keys(odd);
  const name = names[JSON.stringify(sound).length % names.length]!;
  return { ...sound, [name]: (odd as Record<string, unknown>)[name] };
}
