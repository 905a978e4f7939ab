import { describe, expect, it } from 'vitest';
import { operatingPoint, type PropellerInput } from '../../server/src/physics';
import type { StaticCase } from '../validation/cases';
import { standErrors } from '../validation/stands';
import { type Outlines, staticErrors } from '../validation/statics';
import { TRANSCRIBED_STANDS, TRANSCRIBED_STATICS } from '../validation/transcribed';

const INCH = 0.0254;
const RHO = 1.225;
const motor = { statorDiameterMm: 22, statorHeightMm: 6, kv: 2400 };

const onStand = (propeller: PropellerInput, thrust: number, voltage: number, m = motor) => {
  const p = operatingPoint({ motor: m, propeller, voltage, at: { thrust } });
  if (!p.ok) throw new Error(p.why);
  return p.value.figures;
};

describe('against thrust stands', () => {
  // Cao & Strawson 2018, thrust coefficients of five inch propellers over 13 motors: pitch in inch, blades, lowest, highest.
  it.each([
    [4, 3, 0.14, 0.15],
    [4.5, 3, 0.147, 0.163],
    [5.3, 3, 0.175, 0.175],
    [4, 2, 0.129, 0.129],
    [4.5, 2, 0.146, 0.146],
  ])('5x%d in with %i blades has its thrust coefficient within 10 %%', (pitch, blades, low, high) => {
    const propeller = { diameter: 5 * INCH, pitch: pitch * INCH, blades };
    const { rpm } = onStand(propeller, 1.5, 11.1);
    const ct = 1.5 / (RHO * (rpm.value / 60) ** 2 * propeller.diameter ** 4);
    expect(ct).toBeGreaterThan(low * 0.9);
    expect(ct).toBeLessThan(high * 1.1);
  });

  it('draws for 150 gf what 13 motors of 2,000 … 2,800 Kv drew at 11.1 V: 24.5 … 38.3 W', () => {
    const { power } = onStand({ diameter: 5 * INCH, pitch: 4.5 * INCH, blades: 3 }, 0.15 * 9.80665, 11.1);
    expect(power.value).toBeGreaterThan(24.5);
    expect(power.value).toBeLessThan(38.3);
    expect(power.low).toBeLessThan(29);
    expect(power.high).toBeGreaterThan(29);
  });

  it('holds a seven inch propeller on a torque stand: 2.23 N at 7,195 rpm and 37.1 W, or 43.9 W with another controller', () => {
    // alspitz/esc_test@4078609, 2019: 22x7 motor of 1,750 Kv, 7x5.6x3, 16 V.
    const p = onStand({ diameter: 7 * INCH, pitch: 5.6 * INCH, blades: 3 }, 2.23, 15.91, {
      statorDiameterMm: 22,
      statorHeightMm: 7,
      kv: 1750,
    });
    expect(Math.abs(p.rpm.value / 7195 - 1)).toBeLessThan(0.1);
    expect(p.power.low).toBeLessThan(37.1);
    expect(p.power.high).toBeGreaterThan(43.9);
  });

  it('keeps its error on the transcribed rows', () => {
    const e = standErrors(TRANSCRIBED_STANDS);
    expect(e.fullThrust.median).toBeLessThan(0.08);
    expect(e.fullCurrent.median).toBeLessThan(0.11);
    expect(e.partCurrent.median).toBeLessThan(0.1);
    expect(e.othersWithMiddleRow.median).toBeLessThan(0.08);
  });
});

describe('against static propeller tests', () => {
  it('fits the transcribed propellers, each left out in turn', () => {
    const { thrust, power } = staticErrors(TRANSCRIBED_STATICS, 'by trade name');
    expect(thrust.medianByPropeller).toBeLessThan(0.15);
    expect(power.medianByPropeller).toBeLessThan(0.2);
  });

  describe('a research family', () => {
    // Made-up propellers on one law; outlines differ by what the fit calls wide and narrow.
    const made = (family: string, ct: number, n: number): StaticCase => ({
      name: `${family} ${n}`,
      family,
      blades: 2 + (n % 2),
      diameter: 5 * INCH,
      pitch: (2 + n * 0.7) * INCH,
      rows: [100, 150].map((speed) => {
        const tip = (speed * 5 * INCH) / 20;
        const lifts = 0.1 * ct * (1 + n * 0.01) * tip ** 0.06;
        return { speed, ct: lifts, cp: 0.9 * lifts ** 1.5 * tip ** -0.18 };
      }),
    });
    const numbers = [0, 1, 2, 3, 4, 5];
    const traded = numbers.flatMap((n) => [made('apce', 1, n), made('apcsf', 1.25, n), made('apcsp', 0.8, n)]);
    const worst = (cases: readonly StaticCase[], outlines: Outlines): number =>
      staticErrors(cases, outlines).thrust.p90ByPropeller;

    it('is placed by its other propellers', () => {
      const wide = numbers.slice(0, 4).map((n) => made('da4022', 1.25, n));
      expect(worst([...traded, ...wide], 'by trade name')).toBeGreaterThan(0.1);
      expect(worst([...traded, ...wide], 'and research families by their others')).toBeLessThan(0.01);
    });

    it('is not placed by the one that is tested', () => {
      const alone = [...traded, made('da4022', 1.25, 2)];
      const { byPropeller } = staticErrors(alone, 'and research families by their others').thrust;
      expect(byPropeller.at(-1)).toBeCloseTo(1 - 1 / 1.25, 1);
    });
  });
});
