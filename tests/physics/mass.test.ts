import { describe, expect, it } from 'vitest';
import { figureOf, HALF_WIDTH } from '../../server/src/physics/bands';
import {
  FACTOR_COUNT,
  independent,
  indexOf,
  learn,
  shareOf,
  sigmaAt,
  spreadOf,
} from '../../server/src/physics/factors';
import { centreOfMass, totalMass } from '../../server/src/physics/mass';

describe('mass', () => {
  it('adds values straight and independent spreads by squares', () => {
    const sum = totalMass([
      { value: 0.4, low: 0.37, high: 0.43 },
      { value: 0.2, low: 0.16, high: 0.24 },
    ]);
    expect(sum.value).toBeCloseTo(0.6, 12);
    expect(sum.low).toBeCloseTo(0.55, 12);
    expect(sum.high).toBeCloseTo(0.65, 12);
    expect(totalMass([])).toEqual({ value: 0, low: 0, high: 0 });
  });

  it('balances moments', () => {
    const part = (value: number, x: number) => ({ value, low: value, high: value, x });
    expect(centreOfMass([part(0.2, 0.05), part(0.1, -0.04)])).toBeCloseTo(0.02, 12);
    expect(centreOfMass([])).toBeUndefined();
  });
});

describe('ranges', () => {
  it('are a factor wide on each side and never pass a given end', () => {
    const f = figureOf(10, 0.2, 'A', 'modelled');
    expect(f.high / f.value).toBeCloseTo(Math.exp(0.2 * HALF_WIDTH), 12);
    expect(f.value / f.low).toBeCloseTo(Math.exp(0.2 * HALF_WIDTH), 12);
    expect(figureOf(0.95, 0.2, '1', 'modelled', 1).high).toBe(1);
    expect(figureOf(0, 0.2, '1', 'modelled')).toMatchObject({ value: 0, low: 0, high: 0 });
  });

  it('shrink by a measurement as two independent opinions of one quantity do', () => {
    const sigmas = new Array<number>(FACTOR_COUNT).fill(0);
    const i = indexOf('resistance');
    sigmas[i] = 0.3;
    const gradient = sigmas.map((_, k) => (k === i ? 1 : 0));
    const after = learn(independent(sigmas), gradient, 0.5, 0.4);
    // Weights 1/0.09 and 1/0.16: mean 0.5·0.09/0.25, variance 0.09·0.16/0.25.
    expect(after.mean[i]).toBeCloseTo(0.18, 12);
    expect(sigmaAt(after, i)).toBeCloseTo(0.24, 12);
  });

  it('share their variance among what is doubtful', () => {
    const sigmas = new Array<number>(FACTOR_COUNT).fill(0);
    sigmas[indexOf('mass')] = 0.03;
    sigmas[indexOf('power')] = 0.04;
    const belief = independent(sigmas);
    const gradient = new Array<number>(FACTOR_COUNT).fill(1);
    expect(spreadOf(belief, gradient)).toBeCloseTo(0.05, 12);
    expect(shareOf(belief, gradient, indexOf('mass'))).toBeCloseTo(0.36, 12);
    expect(shareOf(belief, gradient, indexOf('kv'))).toBe(0);
  });
});
