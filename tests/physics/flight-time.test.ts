import { describe, expect, it } from 'vitest';
import { estimatedResistance, landingVoltage, openVoltage } from '../../server/src/physics/battery';
import { endurance } from '../../server/src/physics/flight-time';

describe('battery', () => {
  it.each(['lipo', 'lihv', 'li-ion'] as const)('%s: voltage only falls as the charge does', (chemistry) => {
    let last = Number.POSITIVE_INFINITY;
    for (let charge = 1.1; charge > -0.1; charge -= 0.01) {
      const v = openVoltage(chemistry, charge);
      expect(v).toBeLessThanOrEqual(last);
      last = v;
    }
    expect(openVoltage(chemistry, 1)).toBe({ lipo: 4.2, lihv: 4.35, 'li-ion': 4.18 }[chemistry]);
  });

  it('lands a Li-ion pack lower than a LiPo, and by the maker first', () => {
    const pack = { cells: 6, capacity: 4 };
    expect(landingVoltage({ ...pack, chemistry: 'lipo' })).toBe(3.3);
    expect(landingVoltage({ ...pack, chemistry: 'li-ion' })).toBeLessThan(3.01);
    expect(landingVoltage({ ...pack, chemistry: 'li-ion', landingVoltage: 2.8 })).toBe(2.8);
  });

  it('does not believe a label above 90 C', () => {
    const pack = { cells: 6, capacity: 1.3, chemistry: 'lipo' as const };
    expect(estimatedResistance({ ...pack, dischargeRating: 150 })).toBe(
      estimatedResistance({ ...pack, dischargeRating: 90 }),
    );
    expect(estimatedResistance({ ...pack, dischargeRating: 45 })).toBeGreaterThan(
      estimatedResistance({ ...pack, dischargeRating: 90 }),
    );
  });
});

describe('flight time', () => {
  it('is capacity over current for a steady drain', () => {
    const e = endurance(() => ({ current: 10, margin: 2 }), 1.3, 0.2, 20);
    expect(e?.duration).toBeCloseTo((1.3 * 0.8 * 3600) / 10, 6);
    expect(e?.used).toBeCloseTo(1.04, 9);
    expect(e?.energy).toBeCloseTo(1.04 * 22, 6);
    expect(e?.endedBy).toBe('reserve');
  });

  it('ends where the landing voltage is reached', () => {
    const e = endurance((charge) => ({ current: 5, margin: charge - 0.5 }), 1, 0.2, 20);
    expect(e?.chargeLeft).toBeCloseTo(0.5, 3);
    expect(e?.duration).toBeCloseTo((0.5 * 3600) / 5, 0);
    expect(e?.endedBy).toBe('landing-voltage');
  });

  it('has no flight where the full pack is already too low or cannot hold the craft', () => {
    expect(endurance(() => ({ current: 5, margin: -0.1 }), 1, 0.2, 20)).toBeUndefined();
    expect(endurance(() => undefined, 1, 0.2, 20)).toBeUndefined();
  });
});
