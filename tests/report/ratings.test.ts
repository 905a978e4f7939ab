/** Tables of ratings against where they were published, and that the two rooms that know cell voltages say the same. */
import { describe, expect, it } from 'vitest';
import { adiabaticRise, landingVoltage, openVoltage, wireArea } from '../../server/src/physics';
import { chassisAmpacity } from '../../server/src/plan/ampacity';
import { plugLimits } from '../../server/src/plan/battery-plugs';
import { cellVoltage } from '../../server/src/plan/cell-voltage';
import { packEnergy } from '../../server/src/plan/pack-energy';
import { figuresOfText } from '../support/craft-of';
import { freestyle } from './builds';

describe('plugs', () => {
  // JST PH series: 2 A a contact, of which a 1S plug has one each way; XT60 from a report of its maker's sheet.
  it('are rated as their makers publish, and flown above it', () => {
    expect(plugLimits('PH2.0')!.rated).toBe(2);
    expect(plugLimits('XT60')).toMatchObject({ rated: 30, continuous: 60 });
    expect(plugLimits('XT90')!.rated).toBe(45);
    for (const plug of ['PH2.0', 'A30', 'XT30', 'XT60', 'XT90', 'XT150']) {
      const { rated, continuous, short } = plugLimits(plug)!;
      expect(rated <= continuous && continuous < short).toBe(true);
    }
    expect(plugLimits('none')).toBeUndefined();
  });
});

describe('wires', () => {
  // Chassis column of the Handbook of Electronic Tables and Formulas, as reprinted.
  it.each([
    [10, 55],
    [12, 41],
    [14, 32],
    [16, 22],
    [18, 16],
    [20, 11],
    [22, 7],
    [28, 1.4],
  ])('%i AWG carries %d A without end', (gauge, amperes) => {
    expect(chassisAmpacity(gauge)).toBe(amperes);
  });

  it('a lead of 12 AWG warms by 33 K in five seconds of 120 A, by hand', () => {
    // 36.27 A/mm², 0.0050 K/s for each (A/mm²)².
    expect(adiabaticRise(120, wireArea(12), 5)).toBeCloseTo(32.9, 0);
    const figures = figuresOfText(freestyle());
    const full = figures.get('full-current')!.value;
    expect(figures.get('lead-rise')!.value).toBeCloseTo(adiabaticRise(full, wireArea(12), 5), 6);
    // Both wires of 100 mm at 5.21 mΩ/m.
    expect(figures.get('lead-heat')!.value).toBeCloseTo(figures.get('mean-current')!.value ** 2 * 0.2 * 5.21e-3, 2);
    expect(figures.get('plug-burst')!.value).toBeCloseTo(full / 110, 6);
  });
});

describe('cells', () => {
  it.each([
    ['LiPo', 'lipo'],
    ['LiHV', 'lihv'],
    ['Li-ion', 'li-ion'],
  ] as const)('%s is the same to the checks and to the physics', (spoken, chemistry) => {
    expect(landingVoltage({ cells: 1, chemistry, capacity: 1 })).toBe(cellVoltage(spoken).landing);
    expect(Math.abs(openVoltage(chemistry, 1) - cellVoltage(spoken).full)).toBeLessThan(0.03);
  });

  it('hold what the trade counts for air travel', () => {
    expect(packEnergy({ series: 6, parallel: 1 }, 1.3, 'LiPo')).toBeCloseTo(28.86, 2);
    expect(packEnergy({ series: 6, parallel: 1 }, 4.5, 'LiHV')).toBeCloseTo(102.6, 2);
    expect(figuresOfText(freestyle()).get('pack-energy')!.value).toBeCloseTo(28.86, 2);
    expect(figuresOfText(freestyle({ pack: 'energy: 29 Wh' })).get('pack-energy')!.value).toBe(29);
  });
});
