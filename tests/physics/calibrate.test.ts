import { describe, expect, it } from 'vitest';
import { type CraftInput, figures, operatingPoint, type ThrustRow, values } from '../../server/src/physics';
import { FLIGHT_MIXES } from './flight-mix';

const INCH = 0.0254;

/** A 22x5 motor of 2,600 Kv with 5x4x2 draws far more at part load than its size tells (Cao & Strawson 2018, 11.1 V stand). */
const ROWS: readonly ThrustRow[] = [
  { throttle: 0.335, thrust: 1.017, voltage: 11.066, current: 2.407, rpm: 9450 },
  { throttle: 0.525, thrust: 1.837, voltage: 11.028, current: 4.303, rpm: 12748 },
  { throttle: 0.81, thrust: 3.823, voltage: 10.86, current: 9.425, rpm: 18510 },
];

const CRAFT: CraftInput = {
  motors: { count: 4, statorDiameterMm: 22, statorHeightMm: 5, kv: 2600 },
  propeller: { diameter: 5 * INCH, pitch: 4 * INCH, blades: 2 },
  pack: { cells: 3, chemistry: 'lipo', capacity: 1.5, dischargeRating: 60 },
  mass: { value: 0.5, low: 0.49, high: 0.51 },
  auxiliaryPower: 5,
  mix: FLIGHT_MIXES.smooth,
};

const width = (f: { low: number; high: number }): number => Math.log(f.high / f.low);

const currentAt = (row: ThrustRow, table: readonly ThrustRow[]): number => {
  const { kv, statorDiameterMm, statorHeightMm } = CRAFT.motors;
  const p = operatingPoint({
    motor: { kv, statorDiameterMm, statorHeightMm },
    propeller: CRAFT.propeller,
    voltage: row.voltage,
    at: { thrust: row.thrust },
    thrustTable: table,
  });
  if (!p.ok) throw new Error(p.why);
  return p.value.figures.current.value;
};

describe('a thrust table', () => {
  it('corrects rows that it does not hold', () => {
    const [low, middle] = ROWS as [ThrustRow, ThrustRow, ThrustRow];
    const before = Math.abs(Math.log(currentAt(low, []) / low.current!));
    const after = Math.abs(Math.log(currentAt(low, [middle]) / low.current!));
    expect(before).toBeGreaterThan(0.15);
    expect(after).toBeLessThan(before / 2);
  });

  it('narrows the range and says so', () => {
    const without = figures(CRAFT);
    const table = figures({ ...CRAFT, thrustTable: ROWS });
    if (!without.hover.ok || !table.hover.ok) throw new Error('no hover');
    expect(width(table.hover.value.power)).toBeLessThan(0.7 * width(without.hover.value.power));
    expect(table.hover.value.power.basis).toBe('calibrated');
    expect(table.readingsUsed).toBe(9);
  });

  it('reports a row that the nameplate rules out, and leaves a slip of the pen unused', () => {
    const [, middle] = ROWS as [ThrustRow, ThrustRow, ThrustRow];
    const odd = figures({ ...CRAFT, thrustTable: [{ ...middle, current: 9 }] });
    expect(odd.notices).toContainEqual(
      expect.objectContaining({
        code: 'row-contradicts-nameplate',
        details: expect.objectContaining({ row: 0, quantity: 'current', used: true }),
      }),
    );
    const slip = figures({ ...CRAFT, thrustTable: [{ ...middle, current: 430 }] });
    expect(slip.notices).toContainEqual(
      expect.objectContaining({
        code: 'row-contradicts-nameplate',
        details: expect.objectContaining({ quantity: 'current', used: false }),
      }),
    );
    expect(
      figures({ ...CRAFT, thrustTable: ROWS }).notices.filter((n) => n.code === 'row-contradicts-nameplate'),
    ).toEqual([]);
  });
});

describe('measured parts', () => {
  it('uses measured coefficients of a propeller', () => {
    const { kv, statorDiameterMm, statorHeightMm } = CRAFT.motors;
    const point = (propeller: CraftInput['propeller']) => {
      const p = operatingPoint({
        motor: { kv, statorDiameterMm, statorHeightMm },
        propeller,
        voltage: 11,
        at: { thrust: 2 },
      });
      if (!p.ok) throw new Error(p.why);
      return p.value.figures;
    };
    const nameplate = point(CRAFT.propeller);
    const measured = point({
      ...CRAFT.propeller,
      ct: { value: 0.16, trust: 'measured' },
      cp: { value: 0.08, trust: 'measured' },
    });
    // T = CT·ρ·n²·D⁴, so at one thrust the speed goes as CT^−½ (and the slow drift of CT with speed).
    expect(measured.rpm.value).toBeLessThan(nameplate.rpm.value);
    const speed = measured.rpm.value / 60;
    const ct = 2 / (1.225 * speed ** 2 * (5 * INCH) ** 4);
    expect(Math.abs(ct / 0.16 - 1)).toBeLessThan(0.02);
    expect(width(measured.rpm)).toBeLessThan(0.5 * width(nameplate.rpm));
    expect(width(measured.current)).toBeLessThan(width(nameplate.current));
  });

  it('narrows thrust by a measured pack and winding', () => {
    const before = figures(CRAFT);
    const after = figures({
      ...CRAFT,
      motors: {
        ...CRAFT.motors,
        resistance: { value: 0.06, trust: 'measured' },
        noLoadCurrent: { value: 0.9, trust: 'measured' },
      },
      pack: { ...CRAFT.pack, resistance: { value: 0.02, trust: 'measured' } },
    });
    if (!before.full.ok || !after.full.ok) throw new Error('no full throttle');
    expect(width(after.full.value.thrust)).toBeLessThan(width(before.full.value.thrust));
  });

  it('takes less current out of a better winding', () => {
    const at = (ohm: number) => {
      const v = values({ ...CRAFT, motors: { ...CRAFT.motors, resistance: { value: ohm, trust: 'maker' } } });
      if (!v.cruise.ok) throw new Error(v.cruise.why);
      return v.cruise.value.motorHeat;
    };
    expect(at(0.05)).toBeLessThan(at(0.09));
  });
});

describe('a logged flight', () => {
  it('moves the flight time to what was flown and narrows it', () => {
    const before = figures(CRAFT);
    if (!before.asFlown.ok) throw new Error(before.asFlown.why);
    const predicted = before.asFlown.value;
    const current = 1.2 * predicted.meanCurrent.value;
    const used = 1.1;
    const after = figures({ ...CRAFT, log: { flown: 'as-flown', used, duration: (used * 3600) / current } });
    if (!after.asFlown.ok) throw new Error(after.asFlown.why);
    expect(Math.abs(after.asFlown.value.meanCurrent.value / current - 1)).toBeLessThan(0.04);
    expect(width(after.asFlown.value.minutes)).toBeLessThan(0.6 * width(predicted.minutes));
    expect(after.basis).toBe('calibrated');
  });

  it('is reported when no craft like this could have flown so', () => {
    const odd = figures({ ...CRAFT, log: { flown: 'hovering', used: 1.1, duration: 3600 } });
    expect(odd.notices.map((n) => n.code)).toContain('log-contradicts-figures');
  });
});
