/**
 * The speed controller between pack and motor: what share of the voltage a throttle gives, and what is lost at part
 * load. It must not know firmware names; conduction loss is inside the motor's whole-path resistance.
 */
import { clamp } from './constants';

/**
 * Duty of the bridge at throttle zero. On thrust stands the motor sees more than throttle times voltage at part load:
 * the controller starts at a minimum duty and the winding's current does not stop between pulses. Fitted.
 */
const IDLE_DUTY = 0.1;

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
 * Part-load loss as a share of the short-circuit power V²/R at duty ½: current ripple and switching. The term is
 * 4·c·V²/R·d(1 − d), zero at full throttle, and the textbook motor reads far too little current without it. Fitted.
 */
export const PART_LOAD = 0.0035;
