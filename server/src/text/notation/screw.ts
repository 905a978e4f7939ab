/** `M3x8 button`: a screw's thread, length and head; also a bare thread `M3`. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export const screwHeads = ['cap', 'button', 'countersunk', 'pan'] as const;
export type ScrewHead = (typeof screwHeads)[number];

export interface Screw {
  /** mm of thread: 3 for M3 */
  readonly thread: number;
  /** m */
  readonly length: number;
  readonly head?: ScrewHead;
}

export function readScrew(text: string): Read<Screw> {
  const { said, origin } = splitOrigin(text);
  const match = /^M(\d(?:\.\d)?)\s*[x×]\s*(\d{1,2}(?:\.\d)?)(?:\s*mm)?(?:\s+([a-z]+))?$/i.exec(said);
  if (!match) return misread(`\`${said}\` is not a screw; write thread, length in mm and head, as in \`M3x8 button\``);
  const head = match[3]?.toLowerCase() as ScrewHead | undefined;
  if (head && !screwHeads.includes(head))
    return misread(
      `\`${match[3]}\` is not a screw head known here; use one of ${screwHeads.join(', ')}`,
      ...screwHeads.map((known) => `M${match[1]}x${match[2]} ${known}`),
    );
  const value = { thread: Number(match[1]), length: Number(match[2]) / 1000 };
  return { ok: true, value: head ? { ...value, head } : value, origin };
}

export function readThread(text: string): Read<number> {
  const { said, origin } = splitOrigin(text);
  const match = /^M(\d(?:\.\d)?)$/.exec(said);
  if (!match) return misread(`\`${said}\` is not a thread; write it as in \`M3\``);
  return { ok: true, value: Number(match[1]), origin };
}
