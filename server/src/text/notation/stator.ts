/** `2207`, `0802`, `2806.5`: a motor's stator, two digits of diameter and two of height in millimetres. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export interface Stator {
  /** m */
  readonly diameter: number;
  /** m */
  readonly height: number;
}

export function readStator(text: string): Read<Stator> {
  const { said, origin } = splitOrigin(text);
  const match = /^(\d{2})(\d{2}(?:\.\d)?)$/.exec(said);
  if (!match)
    return misread(
      `\`${said}\` is not a stator size; write diameter and height in four digits, as in \`2207\` or \`0802\``,
      ...(/^\d{3}$/.test(said) ? [`0${said}`] : []),
    );
  const diameter = Number(match[1]) / 1000;
  const height = Number(match[2]) / 1000;
  if (diameter === 0 || height === 0) return misread(`a stator of \`${said}\` would have no size; check the digits`);
  return { ok: true, value: { diameter, height }, origin };
}
