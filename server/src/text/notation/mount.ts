/** `30.5x30.5 M3`, `16x16 M3`, `3 holes on 6.6 mm M1.4`, `16-19 M3`: hole patterns of boards and motors, with their screw. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

/** Neighbouring holes of a board, a rectangle; `screw` is the thread in mm (3 for M3). */
export interface BoardMount {
  /** m */
  readonly width: number;
  /** m */
  readonly length: number;
  readonly screw?: number;
  /** The spoken form that was read as the trade means it, such as `30x30`. */
  readonly spoken?: string;
}

/** Holes under a motor: distances between opposite holes, a bolt circle, or a slot that takes a range of them. */
export type MotorMount =
  | { readonly is: 'opposite' /** m */; readonly a: number /** m */; readonly b: number; readonly screw?: number }
  | { readonly is: 'circle'; readonly holes: number /** m */; readonly diameter: number; readonly screw?: number }
  | { readonly is: 'slot' /** m */; readonly least: number /** m */; readonly most: number; readonly screw?: number };

const screwPart = '(?:\\s+M(\\d(?:\\.\\d)?))?';
const pair = new RegExp(`^(\\d{1,2}(?:\\.\\d)?)\\s*[x×]\\s*(\\d{1,2}(?:\\.\\d)?)(?:\\s*mm)?${screwPart}$`);
const circle = new RegExp(`^(\\d) holes on (\\d{1,2}(?:\\.\\d)?)\\s*mm${screwPart}$`);
const slot = new RegExp(`^(\\d{1,2}(?:\\.\\d)?)\\s*[-–]\\s*(\\d{1,2}(?:\\.\\d)?)(?:\\s*mm)?${screwPart}$`);
const screwOf = (text: string | undefined): { screw?: number } => (text === undefined ? {} : { screw: Number(text) });

/** What the trade says and what it means: nobody drills a true 30.0 mm square. Common practice. */
const spokenSides: Readonly<Record<string, number>> = { '30': 30.5, '25': 25.5 };

export function readBoardMount(text: string): Read<BoardMount> {
  const { said, origin } = splitOrigin(text);
  const match = pair.exec(said);
  if (!match) {
    const side = /^(\d{2}(?:\.\d)?)(?:\s*mm)?$/.exec(said);
    return misread(
      `\`${said}\` is not a hole pattern of a board; write both sides and the screw, as in \`30.5x30.5 M3\``,
      ...(side ? [`${spokenSides[side[1]!] ?? side[1]}x${spokenSides[side[1]!] ?? side[1]}`] : []),
    );
  }
  const width = spokenSides[match[1]!] ?? Number(match[1]);
  const length = spokenSides[match[2]!] ?? Number(match[2]);
  const spoken = width !== Number(match[1]) || length !== Number(match[2]) ? { spoken: `${match[1]}x${match[2]}` } : {};
  return { ok: true, value: { width: width / 1000, length: length / 1000, ...screwOf(match[3]), ...spoken }, origin };
}

export function readMotorMount(text: string): Read<MotorMount> {
  const { said, origin } = splitOrigin(text);
  const opposite = pair.exec(said);
  if (opposite)
    return {
      ok: true,
      value: { is: 'opposite', a: Number(opposite[1]) / 1000, b: Number(opposite[2]) / 1000, ...screwOf(opposite[3]) },
      origin,
    };
  const ring = circle.exec(said);
  if (ring)
    return {
      ok: true,
      value: { is: 'circle', holes: Number(ring[1]), diameter: Number(ring[2]) / 1000, ...screwOf(ring[3]) },
      origin,
    };
  const range = slot.exec(said);
  if (range)
    return {
      ok: true,
      value: { is: 'slot', least: Number(range[1]) / 1000, most: Number(range[2]) / 1000, ...screwOf(range[3]) },
      origin,
    };
  return misread(
    `\`${said}\` is not a hole pattern of a motor; write opposite holes and screw (\`16x16 M3\`), a slot (\`16-19 M3\`), or \`3 holes on 6.6 mm M1.4\``,
  );
}
