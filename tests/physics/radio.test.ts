import { describe, expect, it } from 'vitest';
import {
  dBmOfWatts,
  eirp,
  freeSpaceLoss,
  freeSpaceRange,
  type Polarisation,
  polarisationLoss,
  wattsOfDBm,
} from '../../server/src/physics/radio';

const circular = (axialRatioDB: number, hand: 'left' | 'right' = 'right'): Polarisation => ({
  kind: 'circular',
  hand,
  axialRatioDB,
});
const linear = (degrees: number): Polarisation => ({ kind: 'linear', tilt: (degrees * Math.PI) / 180 });

describe('radio', () => {
  it.each([
    [0.025, 13.98],
    [0.2, 23.01],
    [0.6, 27.78],
    [1, 30],
  ])('%d W is %d dBm', (watts, dBm) => {
    expect(dBmOfWatts(watts)).toBeCloseTo(dBm, 2);
    expect(wattsOfDBm(dBm)).toBeCloseTo(watts, 3);
  });

  it('radiates 951 mW from 600 mW and 2 dBi', () => {
    expect(wattsOfDBm(eirp(dBmOfWatts(0.6), 2))).toBeCloseTo(0.951, 3);
  });

  // ITU-R P.525: 20 log(4πd/λ), that is 32.448 + 20 log f(MHz) + 20 log d(km).
  it.each([
    [5800, 0.1, 87.72],
    [5800, 1, 107.72],
    [2440, 1, 100.2],
    [868, 1, 91.22],
    [915, 10, 111.68],
  ])('loses at %d MHz over %d km what ITU-R P.525 says', (mhz, km, loss) => {
    expect(freeSpaceLoss(mhz * 1e6, km * 1000)).toBeCloseTo(loss, 1);
  });

  it('finds the distance at which the loss uses up the budget', () => {
    const range = freeSpaceRange(5.8e9, 29.78, 2, -75.94);
    expect(range).toBeCloseTo(1000, -1);
    expect(freeSpaceRange(5.8e9, 29.78, 2, -75.94, 6.0206)).toBeCloseTo(range / 2, 0);
  });

  it.each([
    [15, 0.3],
    [45, 3.01],
    [60, 6.02],
    [80, 15.21],
  ])('two linear antennas %i° apart lose %d dB', (angle, loss) => {
    expect(polarisationLoss(linear(0), linear(angle))).toBeCloseTo(loss, 2);
  });

  it.each([
    [1, 0.014, 24.82],
    [3, 0.125, 15.47],
    [6, 0.455, 10.02],
  ])(
    'an axial ratio of %i dB against pure circular loses %d dB, or %d dB with the wrong hand',
    (ar, same, opposite) => {
      expect(polarisationLoss(circular(ar), circular(0))).toBeCloseTo(same, 2);
      expect(polarisationLoss(circular(ar), circular(0, 'left'))).toBeCloseTo(opposite, 2);
    },
  );

  it('lets 9.57 dB through at the least between opposite hands of 3 dB axial ratio', () => {
    expect(polarisationLoss(circular(3), circular(3, 'left'), 'smallest')).toBeCloseTo(9.57, 2);
    expect(polarisationLoss(circular(3), circular(3, 'left'), 'largest')).toBe(60);
  });

  it('loses 3 dB between linear and circular', () => {
    expect(polarisationLoss(linear(30), circular(0))).toBeCloseTo(3.01, 2);
  });
});
