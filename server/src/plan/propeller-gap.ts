/** How far the tips of neighbouring propellers stay apart, from where the motors are. Judges nothing. */
import type { Craft } from '../build/craft';
import type { Pointable } from '../build/fact';
import type { Position } from '../text/notation/position';

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
  const { frame, propellers } = craft.roles;
  const diameter = propellers?.size?.value.diameter;
  if (!frame || diameter === undefined) return undefined;
  const positions = frame['motor-positions'];
  if (positions && positions.items.length >= 2) {
    const axes = closest(positions.items.map((item) => item.value));
    return axes === undefined ? undefined : { gap: axes - diameter, axes, assumed: false, rests: positions };
  }
  const { wheelbase, geometry } = frame;
  if (!wheelbase) return undefined;
  const share = sideShare(geometry?.value, frame.motors?.value ?? craft.roles.motors?.count?.value ?? 4);
  if (share === undefined) return undefined;
  const axes = wheelbase.value * share;
  return { gap: axes - diameter, axes, assumed: geometry === undefined, rests: wheelbase };
}

/** Motors one above the other turn in different planes and may overlap. */
function closest(positions: readonly Position[]): number | undefined {
  let least: number | undefined;
  for (let i = 0; i < positions.length; i++) {
    for (let j = i + 1; j < positions.length; j++) {
      const [a, b] = [positions[i]!, positions[j]!];
      if (Math.abs(a.up - b.up) > 0.015) continue;
      const apart = Math.hypot(a.forward - b.forward, a.right - b.right);
      if (least === undefined || apart < least) least = apart;
    }
  }
  return least;
}

/** Neighbouring axes as a share of the diagonal, where the diagonal alone decides it. */
function sideShare(geometry: string | undefined, motors: number): number | undefined {
  if (geometry === 'x' || geometry === 'plus') return Math.SQRT1_2;
  if (geometry === 'hexa') return 0.5;
  return geometry === undefined && motors === 4 ? Math.SQRT1_2 : undefined;
}
