/** `38x38x8 mm`, `75x38 mm`: the outside of a thing. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

/** m; `height` is absent where only an outline was given */
export interface Size {
  readonly length: number;
  readonly width: number;
  readonly height?: number;
}

export function readSize(text: string): Read<Size> {
  const { said, origin } = splitOrigin(text);
  const match = /^(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)(?:\s*[x×]\s*(\d+(?:\.\d+)?))?\s*mm$/.exec(said);
  const unitless = /^[\d.]+\s*[x×]\s*[\d.]+(?:\s*[x×]\s*[\d.]+)?$/.test(said);
  if (!match)
    return misread(
      `\`${said}\` is not a size; write length x width (x height) with the unit, as in \`38x38x8 mm\``,
      ...(unitless ? [`${said} mm`] : []),
    );
  const [length, width] = [Number(match[1]) / 1000, Number(match[2]) / 1000];
  return { ok: true, value: match[3] ? { length, width, height: Number(match[3]) / 1000 } : { length, width }, origin };
}
