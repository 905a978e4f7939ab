/** Whether hole patterns of boards and motors fall on one another, and how they are named. Knows no parts and words no findings. */
import { type BoardMount, type MotorMount, readBoardMount } from '../text/notation/mount';

export type Fit = 'same' | 'near' | 'apart';

/** m: holes are drilled with about this much play. Common practice. */
const play = 0.35e-3;
/** m: 25.5 and 26 mm squares are this far apart and go together through soft grommets only. Common practice. */
const soft = 0.75e-3;

const off = (a: number, b: number): number => Math.abs(a - b);

/** Sides may be given either way round. */
export function boardFit(a: BoardMount, b: BoardMount): Fit {
  const straight = Math.max(off(a.width, b.width), off(a.length, b.length));
  const turned = Math.max(off(a.width, b.length), off(a.length, b.width));
  const worst = Math.min(straight, turned);
  return worst <= play ? 'same' : worst <= soft ? 'near' : 'apart';
}

/** The best of several patterns. */
export function bestBoardFit(board: BoardMount, others: readonly BoardMount[]): Fit {
  const fits = others.map((other) => boardFit(board, other));
  return fits.includes('same') ? 'same' : fits.includes('near') ? 'near' : 'apart';
}

const millimetres = (metres: number): string => `${Number((metres * 1000).toFixed(2))}`;
export const boardName = (mount: BoardMount): string => `${millimetres(mount.width)}x${millimetres(mount.length)}`;

/** A pattern in the free text of an adapter; nothing when it is something else. */
export function boardIn(text: string | undefined): BoardMount | undefined {
  const read = text === undefined ? undefined : readBoardMount(text);
  return read?.ok ? read.value : undefined;
}

/** Distances of opposite holes; a ring of four holes is a square pattern of its diameter. */
function opposite(mount: MotorMount): readonly [number, number] | undefined {
  if (mount.is === 'opposite') return [Math.min(mount.a, mount.b), Math.max(mount.a, mount.b)];
  return mount.is === 'circle' && mount.holes === 4 ? [mount.diameter, mount.diameter] : undefined;
}

/** `half` when one pair of holes meets and the other doesn't. */
export function motorFit(motor: MotorMount, arm: MotorMount): 'same' | 'half' | 'apart' {
  if (motor.is === 'circle' && arm.is === 'circle' && motor.holes === arm.holes)
    return off(motor.diameter, arm.diameter) <= play ? 'same' : 'apart';
  const pair = opposite(motor);
  if (!pair) return 'apart';
  if (arm.is === 'slot') {
    const inside = pair.filter((side) => side >= arm.least - play && side <= arm.most + play).length;
    return inside === 2 ? 'same' : inside === 1 ? 'half' : 'apart';
  }
  const holes = opposite(arm);
  if (!holes) return 'apart';
  if (off(pair[0], holes[0]) <= play && off(pair[1], holes[1]) <= play) return 'same';
  return pair.some((side) => holes.some((hole) => off(side, hole) <= play)) ? 'half' : 'apart';
}
