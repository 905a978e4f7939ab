/**
 * The speed controller between pack and motor: what share of the voltage a throttle gives, and what is lost at part
 * load. It must not know firmware names; conduction loss is inside the motor's whole-path resistance.
 */
import { clamp } from './constants';

/**
 * Duty of the bridge at throttle zero. On thrust stands the motor sees more than throttle times voltage at part load:
 * the controller starts at a minimum duty and the winding's current does not stop between pulses. Fitted.
 */
const IDLE_DUTY = 0.09;

/** Share of the bus voltage across the motor. @param throttle 0 … 1 @param offset added at idle, uncertainty of the above */
export const dutyOfThrottle = (throttle: number, offset = 0): number => {
  const idle = clamp(IDLE_DUTY + offset, 0, 0.3);
  return idle + (1 - idle) * clamp(throttle, 0, 1);
};

/** The inverse; negative when the point is below idle. */
export const throttleOfDuty = (duty: number, offset = 0): number => {
  const idle = clamp(IDLE_DUTY + offset, 0, 0.3);
  return (duty - idle) / (1 - idle);
};

/**
 * Extra current in A that a controller draws at half duty, over what turns the motor: current ripple and switching. The
 * textbook motor reads 20–40 % too little below a third of full throttle without it. It falls to nothing at full
 * throttle; a winding of low resistance has low inductance too, and ripples more. Form and size fitted on the
 * stands named in propeller.ts (7–17 V), so the resistance is held to the range of those motors.
 */
export const rippleCurrent = (pathResistance: number): number =>
  RIPPLE / Math.max(LEAST_FITTED_RESISTANCE, pathResistance) ** 2;

const RIPPLE = 0.0069; // A Ω²
const LEAST_FITTED_RESISTANCE = 0.1; // Ω

/**
 * That current in A at a duty: it goes as 4·d·(1 − d), and never makes the controller draw more than flows in the motor,
 * since what is lost is what circulates between pulses.
 */
export const partLoadCurrent = (ripple: number, duty: number, motorCurrent: number): number => {
  const off = Math.max(0, 1 - duty);
  return Math.min(ripple * 4 * duty * off, motorCurrent * off);
};
