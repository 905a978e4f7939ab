/**
 * A brushless motor as a direct-current one: torque, voltage and losses at a speed. It must not know its propeller.
 *
 * Form: first-order direct-current motor (M. Drela, "First-Order DC Electric Motor Model", MIT, 2007): torque = Kt·(I − I0),
 * voltage = speed/Kv + I·R. The loss torque grows with speed as hysteresis and eddy losses together do.
 *
 * What says "fitted" is fitted on the nine stand series named in propeller.ts, and leans on one published figure besides: the
 * median power of 13 motors of 2,000 … 2,800 Kv at 150 gf and 11.1 V (Cao & Strawson 2018). Motors of one size and Kv differ by
 * a third in part-load current, and nothing on a nameplate tells which is which.
 */
import { clamp, KT_OF_UNIT_KV } from './constants';

export interface MotorSize {
  /** mm, as printed on the motor: 2207 is 22 mm … */
  readonly statorDiameterMm: number;
  /** … by 7 mm. */
  readonly statorHeightMm: number;
  /** rpm per volt, unloaded. */
  readonly kv: number;
}

export interface Motor {
  /** N m per A. */
  readonly torqueConstant: number;
  /** V per rev/s. */
  readonly backEmf: number;
  /** Ω, pack terminals of the controller to the winding and back, warm. */
  readonly resistance: number;
  /** Loss torque in N m at `LOSS_SPEED`. */
  readonly lossTorque: number;
}

/** Speed at which loss torque is stated, rev/s (15,000 rpm). */
export const LOSS_SPEED = 250;

/** Stator volumes of the motors fitted on, mm³ as `statorVolume` gives it, and a little beyond. */
export const STATOR_VOLUME_FITTED: readonly [number, number] = [1500, 12_000];

/** Stator volume d²·h in mm³ (without π/4). */
export const statorVolume = (m: MotorSize): number => m.statorDiameterMm ** 2 * m.statorHeightMm;

/** Motor constant in N m/√W, whole path: a bigger stator makes torque with less heat. Fitted. */
const motorConstant = (m: MotorSize): number => 1.403e-5 * statorVolume(m) ** 0.837;

/** Whole-path resistance in Ω from the nameplate: winding, controller and leads. */
export const estimatedPathResistance = (m: MotorSize): number => (KT_OF_UNIT_KV / m.kv / motorConstant(m)) ** 2;

/**
 * Whole-path warm resistance in Ω from a cold winding's, as data sheets and milliohm meters give it: about twice, for
 * controller, leads, warmth and commutation together (ratios of 1.2 … 2.9 seen on stands).
 */
export const pathResistanceOfWinding = (winding: number): number => 2 * winding + 0.02;

/** Loss torque in N m at `LOSS_SPEED` from the nameplate. Fitted. */
export const estimatedLossTorque = (m: MotorSize): number => 1.81e-6 * statorVolume(m);

/**
 * Loss torque in N m at `LOSS_SPEED` from a no-load current in A.
 * @param voltage at which it was read, V; data sheets use 10 V
 */
export const lossTorqueOfNoLoad = (m: MotorSize, current: number, voltage = 10): number =>
  ((KT_OF_UNIT_KV / m.kv) * current) / lossShape(clamp((m.kv * voltage) / 60, 20, 2000));

/** Growth of loss torque with speed, to the power ¼ (fitted; hysteresis alone would be 0, eddy currents alone 1). */
const lossShape = (speed: number): number => Math.sqrt(Math.sqrt(speed / LOSS_SPEED));

/** Current in A for a shaft torque in N m at a speed in rev/s. */
export const motorCurrent = (m: Motor, torque: number, speed: number): number =>
  (torque + m.lossTorque * lossShape(speed)) / m.torqueConstant;

/** Voltage across the motor in V at a speed in rev/s and a current in A. */
export const motorVoltage = (m: Motor, speed: number, current: number): number =>
  m.backEmf * speed + current * m.resistance;
