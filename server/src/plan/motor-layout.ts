/** Where the motors of a craft are, seen from above, and how far neighbouring propellers stay apart. Judges nothing and guesses no geometry but a true X. */
import type { Craft } from '../build/craft';
import type { Pointable } from '../build/fact';
import type { Position } from '../text/notation/position';

export interface MotorLayout {
  /** m, from the middle of the frame */
  readonly motors: readonly Position[];
  /** The frame said nothing of its geometry; a true X was taken. */
  readonly assumed: boolean;
  readonly rests: Pointable;
}

export interface NeighbourGap {
  /** Indexes into the motors. */
  readonly a: number;
  readonly b: number;
  /** m between the axes */
  readonly axes: number;
  /** m between the tips; negative when the circles overlap */
  readonly gap: number;
}

export function motorLayout(craft: Craft): MotorLayout | undefined {
  const { frame } = craft.roles;
  const said = frame?.['motor-positions'];
  if (said && said.items.length >= 2)
    return { motors: said.items.map((item) => item.value), assumed: false, rests: said };
  const { wheelbase, geometry } = frame ?? {};
  if (!wheelbase) return undefined;
  const angles = anglesOf(geometry?.value, frame?.motors?.value ?? craft.roles.motors?.count?.value ?? 4);
  if (!angles) return undefined;
  const radius = wheelbase.value / 2;
  const motors = angles.map((degrees) => {
    const angle = (degrees * Math.PI) / 180;
    return { forward: radius * Math.cos(angle), right: radius * Math.sin(angle), up: 0 };
  });
  return { motors, assumed: geometry === undefined, rests: wheelbase };
}

/** Degrees clockwise from straight ahead, where the geometry decides them. */
function anglesOf(geometry: string | undefined, motors: number): readonly number[] | undefined {
  if (geometry === 'plus') return [0, 90, 180, 270];
  if (geometry === 'hexa') return [30, 90, 150, 210, 270, 330];
  return geometry === 'x' || (geometry === undefined && motors === 4) ? [45, 135, 225, 315] : undefined;
}

/** Motors one above the other turn in different planes. */
const onePlane = 0.015;

/** Pairs with no third motor nearer to both; the closest pair is always among them. */
export function neighbourGaps(motors: readonly Position[], diameter: number): readonly NeighbourGap[] {
  const apart = (a: number, b: number): number =>
    Math.hypot(motors[a]!.forward - motors[b]!.forward, motors[a]!.right - motors[b]!.right);
  const level = (a: number, b: number): boolean => Math.abs(motors[a]!.up - motors[b]!.up) <= onePlane;
  const found: NeighbourGap[] = [];
  for (let a = 0; a < motors.length; a++)
    for (let b = a + 1; b < motors.length; b++) {
      if (!level(a, b)) continue;
      const axes = apart(a, b);
      const between = motors.some(
        (_, c) => c !== a && c !== b && level(a, c) && Math.max(apart(a, c), apart(b, c)) < axes - 1e-9,
      );
      if (!between) found.push({ a, b, axes, gap: axes - diameter });
    }
  return found;
}
