import { describe, expect, it } from 'vitest';
import { type CraftInput, figures, operatingPoint, values } from '../../server/src/physics';
import { FLIGHT_MIXES } from './flight-mix';

const INCH = 0.0254;

/** The five inch freestyle craft of common practice: 2207 motors, six cells of 1.3 Ah, three blades of 5.1 inch. */
const FREESTYLE: CraftInput = {
  motors: { count: 4, statorDiameterMm: 22, statorHeightMm: 7, kv: 1800 },
  propeller: { diameter: 5.1 * INCH, pitch: 4.3 * INCH, blades: 3 },
  pack: { cells: 6, chemistry: 'lipo', capacity: 1.3, dischargeRating: 100 },
  mass: { value: 0.7, low: 0.68, high: 0.72 },
  auxiliaryPower: 8,
  mix: FLIGHT_MIXES.freestyle,
};

const LONG_RANGE: CraftInput = {
  motors: { count: 4, statorDiameterMm: 28, statorHeightMm: 6.5, kv: 1300 },
  propeller: { diameter: 7 * INCH, pitch: 3.5 * INCH, blades: 3 },
  pack: { cells: 6, chemistry: 'li-ion', capacity: 4, dischargeRating: 10 },
  mass: { value: 1.2, low: 1.15, high: 1.25 },
  auxiliaryPower: 10,
  mix: FLIGHT_MIXES['long-range'],
};

const minutes = (input: CraftInput): number => {
  const v = values(input);
  if (!v.asFlown.ok) throw new Error(v.asFlown.why);
  return v.asFlown.value.minutes;
};

describe('a five inch freestyle craft', () => {
  const f = figures(FREESTYLE);

  it.each([1750, 1800, 1850])('flies between 3.5 and 5.5 minutes with motors of %i Kv', (kv) => {
    const m = minutes({ ...FREESTYLE, motors: { ...FREESTYLE.motors, kv } });
    expect(m).toBeGreaterThan(3.5);
    expect(m).toBeLessThan(5.5);
  });

  it('hovers on more than twice the ideal power and well under a third of throttle', () => {
    if (!f.hover.ok) throw new Error(f.hover.why);
    expect(f.hover.value.power.value).toBeGreaterThan(2 * 50.05);
    expect(f.hover.value.power.value).toBeLessThan(4 * 50.05);
    expect(f.hover.value.throttle.value).toBeGreaterThan(0.18);
    expect(f.hover.value.throttle.value).toBeLessThan(0.32);
  });

  it('puts every value inside its range, and names two things to measure', () => {
    for (const group of [f.full, f.fullSagged, f.hover, f.cruise, f.punch, f.hovering, f.asFlown]) {
      if (!group.ok) throw new Error(group.why);
      for (const figure of Object.values(group.value)) {
        expect(figure.low).toBeLessThanOrEqual(figure.value);
        expect(figure.high).toBeGreaterThanOrEqual(figure.value);
        expect(figure.basis).toBe('modelled');
      }
    }
    expect(f.narrows.flightTime).toHaveLength(2);
    expect(f.narrows.thrust).toHaveLength(2);
    expect(f.narrows.thrust[0]!.share).toBeGreaterThanOrEqual(f.narrows.thrust[1]!.share);
  });

  it('gives the fast path the same values', () => {
    const v = values(FREESTYLE);
    if (!f.hover.ok || !v.hover.ok || !f.asFlown.ok || !v.asFlown.ok) throw new Error('no figures');
    expect(f.hover.value.packCurrent.value).toBe(v.hover.value.packCurrent);
    expect(f.asFlown.value.minutes.value).toBe(v.asFlown.value.minutes);
  });

  it('loses thrust as the pack empties and as the air thins', () => {
    const high = values({ ...FREESTYLE, air: { altitude: 2500 } });
    const v = values(FREESTYLE);
    if (!v.full.ok || !v.fullSagged.ok || !high.full.ok) throw new Error('no figures');
    expect(v.fullSagged.value.thrustToWeight).toBeLessThan(v.full.value.thrustToWeight);
    expect(high.full.value.thrust).toBeLessThan(0.92 * v.full.value.thrust);
  });
});

describe('a seven inch Li-ion craft', () => {
  it('lands by the Li-ion voltage, far under a LiPo', () => {
    const tired = { ...LONG_RANGE, mix: { ...LONG_RANGE.mix, reserve: 0 } };
    const v = values(tired);
    if (!v.asFlown.ok) throw new Error(v.asFlown.why);
    expect(v.asFlownEndsBy).toBe('landing-voltage');
    expect(v.asFlown.value.landingCellVoltage).toBeCloseTo(2.9, 2);
    const maker = values({ ...tired, pack: { ...tired.pack, landingVoltage: 3.1 } });
    if (!maker.asFlown.ok) throw new Error(maker.asFlown.why);
    expect(maker.asFlown.value.landingCellVoltage).toBeCloseTo(3.1, 2);
    expect(maker.asFlown.value.minutes).toBeLessThan(v.asFlown.value.minutes);
  });
});

describe('what cannot be', () => {
  it('says that a craft is too heavy to hover', () => {
    const v = figures({ ...FREESTYLE, mass: { value: 9, low: 9, high: 9 } });
    expect(v.hover).toMatchObject({ ok: false, why: 'cannot-hover' });
    expect(v.asFlown).toMatchObject({ ok: false, why: 'cannot-hover' });
    expect(v.full.ok).toBe(true);
    expect(v.narrows.flightTime).toEqual([]);
  });

  it('names the field that no real part has', () => {
    expect(figures({ ...FREESTYLE, motors: { ...FREESTYLE.motors, kv: Number.NaN } }).full).toMatchObject({
      ok: false,
      why: 'bad-input',
      field: 'motors.kv',
    });
  });

  it('says that a spent pack cannot start', () => {
    const v = values({ ...FREESTYLE, pack: { ...FREESTYLE.pack, landingVoltage: 4.2 } });
    expect(v.hovering).toMatchObject({ ok: false, why: 'below-landing-voltage' });
  });

  it('warns where the law has no data under it', () => {
    const tiny = figures({
      ...FREESTYLE,
      motors: { count: 4, statorDiameterMm: 8, statorHeightMm: 2, kv: 22000 },
      propeller: { diameter: 0.031, pitch: 0.02, blades: 4, ducted: true },
      pack: { cells: 1, chemistry: 'lihv', capacity: 0.3, dischargeRating: 50 },
      mass: { value: 0.026, low: 0.025, high: 0.027 },
      auxiliaryPower: 1.5,
    });
    expect(tiny.notices.map((n) => n.code)).toEqual(expect.arrayContaining(['size-outside-fit', 'duct-estimated']));
    const five = figures(FREESTYLE);
    if (!tiny.hover.ok || !five.hover.ok) throw new Error('no hover');
    const width = (f: { low: number; high: number }) => Math.log(f.high / f.low);
    expect(width(tiny.hover.value.power)).toBeGreaterThan(1.5 * width(five.hover.value.power));
  });
});

describe('six motors, eight motors, pairs', () => {
  it('lifts more with more motors and loses some of it in pairs', () => {
    const eight = values({ ...FREESTYLE, motors: { ...FREESTYLE.motors, count: 8 } });
    const pairs = figures({ ...FREESTYLE, motors: { ...FREESTYLE.motors, count: 8, coaxial: true } });
    const four = values(FREESTYLE);
    if (!four.full.ok || !eight.full.ok || !pairs.full.ok) throw new Error('no figures');
    expect(eight.full.value.thrust).toBeGreaterThan(1.3 * four.full.value.thrust);
    expect(pairs.full.value.thrust.value / eight.full.value.thrust).toBeCloseTo(0.86, 2);
    expect(pairs.notices.map((n) => n.code)).toContain('coaxial-estimated');
  });
});

describe('one point on a stand', () => {
  const motor = { statorDiameterMm: 22, statorHeightMm: 7, kv: 1750 };
  const propeller = { diameter: 5.1 * INCH, pitch: 3.6 * INCH, blades: 3 };

  it('answers by throttle and by thrust alike', () => {
    const byThrottle = operatingPoint({ motor, propeller, voltage: 22.2, at: { throttle: 0.6 } });
    if (!byThrottle.ok) throw new Error(byThrottle.why);
    const { thrust, current, power } = byThrottle.value.figures;
    expect(power.value).toBeCloseTo(22.2 * current.value, 4);
    const byThrust = operatingPoint({ motor, propeller, voltage: 22.2, at: { thrust: thrust.value } });
    if (!byThrust.ok) throw new Error(byThrust.why);
    expect(byThrust.value.figures.throttle.value).toBeCloseTo(0.6, 4);
    // Asked for a thrust, the thrust itself is not doubtful.
    expect(byThrust.value.figures.thrust.high).toBeCloseTo(thrust.value, 6);
  });

  it('types an impossible point and a senseless one', () => {
    expect(operatingPoint({ motor, propeller, voltage: 22.2, at: { thrust: 60 } })).toMatchObject({
      ok: false,
      why: 'cannot-reach',
    });
    expect(operatingPoint({ motor, propeller, voltage: 22.2, at: { throttle: 1.5 } })).toMatchObject({
      ok: false,
      why: 'bad-input',
      field: 'at',
    });
    expect(operatingPoint({ motor, propeller, voltage: -1, at: { throttle: 0.5 } })).toMatchObject({
      ok: false,
      field: 'voltage',
    });
  });
});
