/** What a reader should know about the figures before trusting them. Typed facts; it must not word them. */
import { openVoltage } from './battery';
import type { Contradiction } from './calibrate';
import type { CraftInput, PropellerInput } from './craft';
import type { CraftValues } from './craft-values';
import { dutyOfThrottle } from './esc';
import { type MotorSize, STATOR_VOLUME_FITTED, statorVolume } from './motor';
import { PITCH_RATIO_FITTED } from './propeller';

export type NoticeCode =
  /** Pitch over diameter is outside the propellers the law was fitted on. */
  | 'pitch-ratio-outside-fit'
  /** Fewer than two or more than four blades. */
  | 'blades-outside-fit'
  /** Smaller than 2.2 or larger than 10 inches. */
  | 'size-outside-fit'
  /** The stator is smaller or larger than those the motor laws were fitted on. */
  | 'motor-outside-fit'
  /** Below four inches the data are few. */
  | 'small-propeller'
  /** The gain of a duct is an estimate. */
  | 'duct-estimated'
  /** The loss of a coaxial pair is an estimate. */
  | 'coaxial-estimated'
  /** Tips faster than Mach 0.65: real thrust falls behind the figure. */
  | 'tip-mach-high'
  /** Hover below 15 % duty, where controllers differ most. */
  | 'hover-throttle-low'
  /** Full throttle pulls the pack below 0.7 of its open voltage. */
  | 'deep-sag'
  /** The landing voltage, not the reserve, ends the flight. */
  | 'landing-voltage-first'
  /** A measured row is outside twice its typical range. */
  | 'row-contradicts-nameplate'
  /** The logged flight is outside twice its typical range. */
  | 'log-contradicts-figures';

export interface Notice {
  readonly code: NoticeCode;
  readonly details: Readonly<Record<string, number | string | boolean>>;
}

const INCH = 0.0254;

/** What the sizes of motor and propeller alone tell. */
export function sizeNotices(m: MotorSize, p: PropellerInput): Notice[] {
  const notices: Notice[] = [];
  const volume = statorVolume(m);
  const [smallest, largest] = STATOR_VOLUME_FITTED;
  if (volume < smallest || volume > largest)
    notices.push({ code: 'motor-outside-fit', details: { volume, smallest, largest } });
  const ratio = p.pitch / p.diameter;
  const inches = p.diameter / INCH;
  const [low, high] = PITCH_RATIO_FITTED;
  if (ratio < low || ratio > high) notices.push({ code: 'pitch-ratio-outside-fit', details: { ratio, low, high } });
  if (p.blades < 2 || p.blades > 4) notices.push({ code: 'blades-outside-fit', details: { blades: p.blades } });
  if (inches < 2.2 || inches > 10.05) notices.push({ code: 'size-outside-fit', details: { inches } });
  else if (inches < 4) notices.push({ code: 'small-propeller', details: { inches } });
  if (p.ducted) notices.push({ code: 'duct-estimated', details: {} });
  return notices;
}

/** What the solved craft tells. */
export function craftNotices(input: CraftInput, v: CraftValues, contradictions: readonly Contradiction[]): Notice[] {
  const notices = sizeNotices(input.motors, input.propeller);
  if (input.motors.coaxial) notices.push({ code: 'coaxial-estimated', details: {} });
  if (v.full.ok && v.full.value.tipMach > 0.65)
    notices.push({ code: 'tip-mach-high', details: { tipMach: v.full.value.tipMach } });
  if (v.hover.ok && dutyOfThrottle(v.hover.value.throttle) < 0.15)
    notices.push({ code: 'hover-throttle-low', details: { throttle: v.hover.value.throttle } });
  if (v.full.ok && v.full.value.cellVoltage < 0.7 * openVoltage(input.pack.chemistry, 1))
    notices.push({ code: 'deep-sag', details: { cellVoltage: v.full.value.cellVoltage } });
  if (v.asFlownEndsBy === 'landing-voltage')
    notices.push({ code: 'landing-voltage-first', details: { flight: 'as-flown' } });
  if (v.hoveringEndsBy === 'landing-voltage')
    notices.push({ code: 'landing-voltage-first', details: { flight: 'hovering' } });
  for (const c of contradictions) {
    const { row, quantity, measured, predicted, sigmas, used } = c;
    notices.push(
      row === undefined
        ? { code: 'log-contradicts-figures', details: { quantity, measured, predicted, sigmas, used } }
        : { code: 'row-contradicts-nameplate', details: { row, quantity, measured, predicted, sigmas, used } },
    );
  }
  return notices;
}
