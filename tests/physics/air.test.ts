import { describe, expect, it } from 'vitest';
import { airAt } from '../../server/src/physics/air';

describe('air', () => {
  // US Standard Atmosphere 1976, table I (geopotential height, density).
  it.each([
    [0, 1.225],
    [500, 1.1673],
    [1000, 1.1116],
    [1500, 1.0581],
    [2000, 1.0065],
    [2500, 0.9569],
    [3000, 0.9091],
    [4000, 0.8191],
  ])('has the standard density at %i m', (height, density) => {
    expect(Math.abs(airAt(height).density / density - 1)).toBeLessThan(2e-4);
  });

  it('has the standard speed of sound and viscosity at sea level', () => {
    expect(airAt(0).speedOfSound).toBeCloseTo(340.29, 1);
    expect(airAt(0).viscosity).toBeCloseTo(1.7894e-5, 8);
  });

  it('keeps the pressure of the height when the day is hot', () => {
    // 89,874.6 Pa at 1,000 m; 35 °C.
    expect(airAt(1000, 308.15).density).toBeCloseTo(1.016, 3);
  });

  it('answers for heights and temperatures that are not numbers', () => {
    expect(airAt(Number.NaN, Number.NaN).density).toBeCloseTo(1.225, 3);
  });
});
