/** The screw that will hold a motor, and how far it goes into it. Judges nothing. */
import type { Craft } from '../build/craft';
import type { Fact } from '../build/fact';
import type { Screw } from '../text/notation/screw';

/** What the motors say, else a fastener meant for them, else what comes with the frame. */
export function motorScrew(craft: Craft): Fact<Screw> | undefined {
  const own = craft.roles.motors?.screws;
  if (own) return own;
  const fastener = [...(craft.roles.fasteners?.entries.values() ?? [])].find(
    (one) => one.for?.value === 'motors' && one.screw,
  );
  return fastener?.screw ?? craft.roles.frame?.['motor-screws'];
}

/** m of thread in the motor; a soft pad gives way by half. Common practice. */
export function engagement(length: number, arm: number, washer = 0, soft = 0): number {
  return length - arm - washer - soft / 2;
}

/** Lengths in mm that screws are sold in. Common practice. */
const common = [3, 4, 5, 6, 8, 10, 12, 14, 16];
const rare = [7, 9, 11];

/** m; the longest screw on sale whose engagement lies in these limits, common lengths first, or nothing. */
export function lengthFor(least: number, most: number, arm: number, washer = 0, soft = 0): number | undefined {
  const fits = (length: number): boolean => {
    const inside = engagement(length / 1000, arm, washer, soft);
    return inside >= least - 1e-9 && inside <= most + 1e-9;
  };
  const best = common.filter(fits).at(-1) ?? rare.filter(fits).at(-1);
  return best === undefined ? undefined : best / 1000;
}

/** m of thread in the motor before the winding, when the motor doesn't say. Common practice for these threads, unknown for others. */
export const usualDepth = (thread: number): number | undefined =>
  thread === 3 ? 4e-3 : thread === 2 ? 2e-3 : undefined;

/** m of thread below which a screw works loose: about 0.8 of its diameter in aluminium. Common practice. */
export const leastEngagement = (thread: number): number =>
  thread === 3 ? 2.5e-3 : thread === 2 ? 1.5e-3 : thread * 0.8e-3;

/** m below which it holds by hardly three turns. */
export const poorEngagement = (thread: number): number =>
  thread === 3 ? 1.5e-3 : thread === 2 ? 1.2e-3 : thread * 0.5e-3;
