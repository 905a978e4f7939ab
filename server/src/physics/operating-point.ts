/**
 * One motor with its propeller at one steady point, fed by a pack or a stand: solves for speed at a given thrust or duty.
 * It must not know the craft: supplies count how many equal motors hang on them.
 */
import type { Air } from './air';
import { partLoadCurrent, rippleCurrent } from './esc';
import { type Motor, motorCurrent, motorVoltage } from './motor';
import { type Propeller, pitchSpeed, speedForThrust, thrustAt, tipMach, torqueAt } from './propeller';
import { impossible, type Outcome, possible } from './result';

/** A motor, its propeller, its controller's part-load loss and the air. */
export interface Rotor {
  readonly propeller: Propeller;
  readonly motor: Motor;
  readonly air: Air;
  /** Multiplies the part-load loss. */
  readonly partLoad: number;
}

/** What feeds the motors. A stand's supply has no resistance, one motor and no other load. */
export interface Supply {
  /** V at no load. */
  readonly openVoltage: number;
  /** Ω */
  readonly resistance: number;
  /** Equal motors at the same point. */
  readonly motors: number;
  /** W drawn by everything else. */
  readonly auxiliary: number;
}

/** A supply that holds its voltage, feeding one motor. */
export const stand = (voltage: number): Supply => ({ openVoltage: voltage, resistance: 0, motors: 1, auxiliary: 0 });

export interface OperatingPoint {
  /** rev/s */
  readonly speed: number;
  /** N, one propeller. */
  readonly thrust: number;
  /** N m at the shaft. */
  readonly torque: number;
  /** Share of the bus voltage across the motor. */
  readonly duty: number;
  /** A in the motor. */
  readonly motorCurrent: number;
  /** V at the controllers. */
  readonly busVoltage: number;
  /** A that one controller draws. */
  readonly escCurrent: number;
  /** A from the supply: all motors and everything else. */
  readonly supplyCurrent: number;
  /** W that one controller draws. */
  readonly escPower: number;
  /** W of heat in winding, path and iron of one motor. */
  readonly motorHeat: number;
  /** W of part-load loss of one motor and controller. */
  readonly partLoadHeat: number;
  readonly tipMach: number;
  /** m/s */
  readonly pitchSpeed: number;
}

/** Below this share of the open voltage more throttle may give less thrust; a real pack would have given up. */
const LEAST_BUS_SHARE = 0.5;
const BUS_ROUNDS = 4;

const rippleOf = (rotor: Rotor): number => rippleCurrent(rotor.motor.resistance) * rotor.partLoad;

function pointAt(
  rotor: Rotor,
  supply: Supply,
  speed: number,
  current: number,
  across: number,
  bus: number,
): OperatingPoint {
  const { propeller, air } = rotor;
  const torque = torqueAt(propeller, air, speed);
  const partLoadHeat = bus * partLoadCurrent(rippleOf(rotor), across / bus, current);
  const escPower = across * current + partLoadHeat;
  return {
    speed,
    thrust: thrustAt(propeller, air, speed),
    torque,
    duty: across / bus,
    motorCurrent: current,
    busVoltage: bus,
    escCurrent: escPower / bus,
    supplyCurrent: (supply.motors * escPower + supply.auxiliary) / bus,
    escPower,
    motorHeat: across * current - 2 * Math.PI * speed * torque,
    partLoadHeat,
    tipMach: tipMach(propeller, air, speed),
    pitchSpeed: pitchSpeed(propeller, speed),
  };
}

/**
 * The point at which one propeller gives a thrust in N.
 * Errors: `cannot-reach` when it needs more than the whole bus voltage, `pack-cannot-deliver` when no bus voltage gives the power.
 */
export function atThrust(rotor: Rotor, supply: Supply, thrust: number): Outcome<OperatingPoint> {
  const speed = speedForThrust(rotor.propeller, rotor.air, thrust);
  const current = motorCurrent(rotor.motor, torqueAt(rotor.propeller, rotor.air, speed), speed);
  const across = motorVoltage(rotor.motor, speed, current);
  const ripple = rippleOf(rotor);
  const { openVoltage, resistance, motors, auxiliary } = supply;
  // The bus voltage is the upper root of a quadratic in which the part-load loss depends a little on the voltage itself:
  // from the open voltage, where that loss is largest, a few rounds settle it.
  let bus = openVoltage;
  for (let round = 0; round < (resistance > 0 ? BUS_ROUNDS : 0); round++) {
    const power = motors * (across * current + bus * partLoadCurrent(ripple, across / bus, current)) + auxiliary;
    const discriminant = (openVoltage / 2) ** 2 - resistance * power;
    if (!(discriminant >= 0)) return impossible('pack-cannot-deliver', { thrust, openVoltage, resistance, power });
    bus = openVoltage / 2 + Math.sqrt(discriminant);
  }
  if (across > bus) return impossible('cannot-reach', { thrust, voltageNeeded: across, busVoltage: bus });
  return possible(pointAt(rotor, supply, speed, current, across, bus));
}

/**
 * The point at a duty of the bridge, 0 … 1.
 * Errors: `cannot-turn` when the voltage doesn't cover the losses at a crawl, `pack-cannot-deliver` when the loaded
 * voltage would fall under half the open one.
 */
export function atDuty(rotor: Rotor, supply: Supply, duty: number): Outcome<OperatingPoint> {
  const { motor } = rotor;
  const { openVoltage, resistance, motors, auxiliary } = supply;
  const ripple = rippleOf(rotor);
  const leastBus = LEAST_BUS_SHARE * openVoltage;
  /** Bus voltage this speed needs less what the supply then has: rises with speed. */
  const excess = (speed: number): number => {
    const current = motorCurrent(motor, torqueAt(rotor.propeller, rotor.air, speed), speed);
    const across = motorVoltage(motor, speed, current);
    const bus = across / duty;
    const drawn =
      motors * (duty * current + partLoadCurrent(ripple, duty, current)) + auxiliary / Math.max(bus, leastBus);
    return bus - openVoltage + resistance * drawn;
  };
  const highest = (duty * openVoltage) / motor.backEmf;
  let low = highest * 1e-3;
  let high = highest;
  let atLow = excess(low);
  if (!(duty > 0)) return impossible('cannot-turn', { duty, openVoltage });
  if (!(atLow < 0)) {
    const crawl = motorVoltage(motor, low, motorCurrent(motor, torqueAt(rotor.propeller, rotor.air, low), low));
    return impossible(crawl >= duty * openVoltage ? 'cannot-turn' : 'pack-cannot-deliver', { duty, openVoltage });
  }
  let atHigh = excess(high);
  // Regula falsi with the Illinois weight: bracketing, so it cannot run away; a few steps are enough.
  let side = 0;
  for (let i = 0; i < 40 && high - low > 1e-7 * highest; i++) {
    const speed = (low * atHigh - high * atLow) / (atHigh - atLow);
    const value = excess(speed);
    if (value < 0) {
      low = speed;
      atLow = value;
      if (side < 0) atHigh /= 2;
      side = -1;
    } else {
      high = speed;
      atHigh = value;
      if (side > 0) atLow /= 2;
      side = 1;
    }
    if (Math.abs(value) < 1e-7 * openVoltage) {
      low = speed;
      break;
    }
  }
  const speed = low;
  const current = motorCurrent(motor, torqueAt(rotor.propeller, rotor.air, speed), speed);
  const across = motorVoltage(motor, speed, current);
  const bus = across / duty;
  if (bus < leastBus) return impossible('pack-cannot-deliver', { busVoltage: bus, openVoltage });
  return possible(pointAt(rotor, supply, speed, current, across, bus));
}
