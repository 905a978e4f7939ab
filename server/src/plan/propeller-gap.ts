/** How far the tips of neighbouring propellers stay apart, from where the motors are. Judges nothing. */
import type { Craft } from '../build/craft';
import type { Pointable } from '../build/fact';
import { motorLayout, neighbourGaps } from './motor-layout';

export interface PropellerGap {
  /** m between neighbouring tips; negative when the circles overlap */
  readonly gap: number;
  /** m between the axes of the closest pair */
  readonly axes: number;
  /** The frame said nothing of its geometry; a true X was taken. */
  readonly assumed: boolean;
  readonly rests: Pointable;
}

export function propellerGap(craft: Craft): PropellerGap | undefined {
  const diameter = craft.roles.propellers?.size?.value.diameter;
  const layout = diameter === undefined ? undefined : motorLayout(craft);
  if (diameter === undefined || !layout) return undefined;
  const [first, ...others] = neighbourGaps(layout.motors, diameter);
  if (!first) return undefined;
  const { gap, axes } = others.reduce((least, one) => (one.gap < least.gap ? one : least), first);
  return { gap, axes, assumed: layout.assumed, rests: layout.rests };
}
