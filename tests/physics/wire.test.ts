import { describe, expect, it } from 'vitest';
import { adiabaticRise, wireArea, wireDiameter, wireResistancePerMetre } from '../../server/src/physics/wire';

describe('wire', () => {
  // ASTM B258: gauge, diameter in mm, area in mm².
  it.each([
    [36, 0.127, 0.01267],
    [10, 2.5882, 5.2612],
    [12, 2.0525, 3.3088],
    [14, 1.6277, 2.0809],
    [20, 0.8118, 0.5176],
    [30, 0.2546, 0.0509],
  ])('gauge %i has the diameter and area of the standard', (gauge, mm, mm2) => {
    expect(Math.abs((wireDiameter(gauge) * 1000) / mm - 1)).toBeLessThan(1e-3);
    expect(Math.abs((wireArea(gauge) * 1e6) / mm2 - 1)).toBeLessThan(2e-3);
  });

  it('has the resistance of the printed copper tables', () => {
    expect(Math.abs((wireResistancePerMetre(12) * 1000) / 5.21 - 1)).toBeLessThan(4e-3);
    expect(Math.abs((wireResistancePerMetre(24) * 1000) / 84.2 - 1)).toBeLessThan(4e-3);
  });

  it('loses 16.6 W in a 0.2 m loop of gauge 14 at 100 A', () => {
    expect(100 ** 2 * wireResistancePerMetre(14) * 0.2).toBeCloseTo(16.6, 1);
  });

  it('warms gauge 12 by about 66 K in 10 s at 120 A when no heat leaves it', () => {
    expect(adiabaticRise(120, wireArea(12), 10)).toBeCloseTo(66, -0.5);
    expect(adiabaticRise(120, 0, 10)).toBe(0);
  });
});
