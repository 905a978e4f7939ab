import { describe, expect, it } from 'vitest';
import { airAt } from '../../server/src/physics/air';
import { discArea, idealHoverPower, inducedSpeed } from '../../server/src/physics/hover';
import { lossTorqueOfNoLoad, type Motor, motorCurrent, motorVoltage } from '../../server/src/physics/motor';
import { atDuty, atThrust, type Rotor, stand } from '../../server/src/physics/operating-point';
import { propellerOf, speedForThrust, thrustAt, torqueAt } from '../../server/src/physics/propeller';

const INCH = 0.0254;
const air = airAt();
const five = propellerOf({ diameter: 5.1 * INCH, pitch: 4.3 * INCH, blades: 3 });
const motor: Motor = {
  torqueConstant: 60 / (2 * Math.PI * 1750),
  backEmf: 60 / 1750,
  resistance: 0.15,
  lossTorque: 0.006,
};
const rotor: Rotor = { propeller: five, motor, air, partLoad: 1 };

describe('hover by momentum theory', () => {
  // Ideal power of one disc, T^1.5/√(2ρA) at 1.225 kg/m³: craft mass in kg, propellers of an inch size, W, m/s.
  it.each([
    [0.7, 5.1, 12.51, 7.29],
    [0.17, 3, 2.546, 6.11],
    [1.1, 7, 17.96, 6.66],
    [3.2, 10, 62.37, 7.95],
  ])('%d kg on four propellers of %d inch', (mass, inches, watts, induced) => {
    const thrust = (mass * 9.80665) / 4;
    expect(Math.abs(idealHoverPower(thrust, inches * INCH, 1.225) / watts - 1)).toBeLessThan(1e-3);
    expect(Math.abs(inducedSpeed(thrust, inches * INCH, 1.225) / induced - 1)).toBeLessThan(1e-3);
  });

  it('is never beaten by a modelled propeller', () => {
    for (const inches of [1.6, 2, 3, 5, 7, 10])
      for (const ratio of [0.3, 0.6, 0.9, 1.2])
        for (const blades of [2, 3, 4, 6])
          for (const speed of [20, 100, 400, 1200]) {
            const p = propellerOf({ diameter: inches * INCH, pitch: ratio * inches * INCH, blades });
            const shaft = 2 * Math.PI * speed * torqueAt(p, air, speed);
            expect(shaft).toBeGreaterThan(idealHoverPower(thrustAt(p, air, speed), p.diameter, air.density) / 0.73);
          }
  });

  it('has the area of a circle', () => {
    expect(discArea(5.1 * INCH)).toBeCloseTo(0.013179, 6);
  });
});

describe('motor', () => {
  it('agrees with a direct-current motor worked by hand', () => {
    // Kv 1,000 rpm/V, 0.1 Ω, no-load current 0.8 A, 10 V, 20 A: 8,000 rpm; 19.2 A make torque: 0.1833 N m, 153.6 W of 200 W.
    const size = { statorDiameterMm: 22, statorHeightMm: 7, kv: 1000 };
    const m: Motor = {
      torqueConstant: 60 / (2 * Math.PI * 1000),
      backEmf: 60 / 1000,
      resistance: 0.1,
      lossTorque: lossTorqueOfNoLoad(size, 0.8, 8),
    };
    const speed = 8000 / 60;
    expect(motorCurrent(m, 0.18335, speed)).toBeCloseTo(20, 3);
    expect(motorVoltage(m, speed, 20)).toBeCloseTo(10, 9);
    expect(2 * Math.PI * speed * 0.18335).toBeCloseTo(153.6, 1);
  });
});

describe('operating point', () => {
  it('finds the speed that gives a thrust, also where the drift of the coefficients ends', () => {
    for (const thrust of [0.001, 0.1, 1.7, 15, 60])
      expect(thrustAt(five, air, speedForThrust(five, air, thrust))).toBeCloseTo(thrust, 9);
    expect(speedForThrust(five, air, 0)).toBe(0);
  });

  it('accounts for all power: shaft, motor heat and part-load heat', () => {
    const p = atDuty(rotor, { openVoltage: 24, resistance: 0.03, motors: 4, auxiliary: 8 }, 0.6);
    if (!p.ok) throw new Error(p.why);
    const { torque, speed, motorHeat, partLoadHeat, escPower, supplyCurrent, busVoltage } = p.value;
    expect(2 * Math.PI * speed * torque + motorHeat + partLoadHeat).toBeCloseTo(escPower, 6);
    expect(supplyCurrent * busVoltage).toBeCloseTo(4 * escPower + 8, 6);
    expect(busVoltage).toBeCloseTo(24 - 0.03 * supplyCurrent, 3);
  });

  it('gives the same point by duty and by thrust', () => {
    const supply = { openVoltage: 24, resistance: 0.03, motors: 4, auxiliary: 8 };
    const byDuty = atDuty(rotor, supply, 0.45);
    if (!byDuty.ok) throw new Error(byDuty.why);
    const byThrust = atThrust(rotor, supply, byDuty.value.thrust);
    if (!byThrust.ok) throw new Error(byThrust.why);
    expect(byThrust.value.duty).toBeCloseTo(0.45, 4);
    expect(byThrust.value.supplyCurrent / byDuty.value.supplyCurrent).toBeCloseTo(1, 4);
  });

  it('types what cannot be', () => {
    expect(atThrust(rotor, stand(22.2), 100)).toMatchObject({ ok: false, why: 'cannot-reach' });
    expect(atThrust(rotor, { openVoltage: 24, resistance: 2, motors: 4, auxiliary: 0 }, 5)).toMatchObject({
      ok: false,
      why: 'pack-cannot-deliver',
    });
    expect(atDuty(rotor, stand(22.2), 0)).toMatchObject({ ok: false, why: 'cannot-turn' });
    expect(atDuty({ ...rotor, motor: { ...motor, lossTorque: 5 } }, stand(22.2), 0.1)).toMatchObject({
      ok: false,
      why: 'cannot-turn',
    });
  });
});
