/** `5.1x3.6x3` (inches: diameter x pitch x blades) or `40 mm, 3 blades`: a propeller's size. A bare code such as `51433` is ambiguous and refused. */

import { type Origin, splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export interface PropellerSize {
  /** m */
  readonly diameter: number;
  /** m; absent when the notation does not tell it */
  readonly pitch?: number;
  readonly blades: number;
}

const inch = 0.0254;

export function readPropellerSize(text: string): Read<PropellerSize> {
  const { said, origin } = splitOrigin(text);
  const inches = /^(\d{1,2}(?:\.\d{1,2})?)\s*[x×]\s*(\d{1,2}(?:\.\d{1,2})?)\s*[x×]\s*(\d)$/.exec(said);
  if (inches) return sized(Number(inches[1]) * inch, Number(inches[2]) * inch, Number(inches[3]), said, origin);
  const metric = /^(\d{2,3}(?:\.\d)?)\s*mm(?:\s*[x×]\s*(\d{1,3}(?:\.\d)?)\s*mm)?,\s*(\d)\s*blades?$/.exec(said);
  if (metric)
    return sized(
      Number(metric[1]) / 1000,
      metric[2] ? Number(metric[2]) / 1000 : undefined,
      Number(metric[3]),
      said,
      origin,
    );
  const noBlades = /^(\d{1,2}(?:\.\d{1,2})?)\s*[x×]\s*(\d{1,2}(?:\.\d{1,2})?)$/.exec(said);
  if (noBlades)
    return misread(
      `\`${said}\` does not say how many blades; add them`,
      ...sound([2, 3].map((blades) => `${noBlades[1]}x${noBlades[2]}x${blades}`)),
    );
  const code = /^(\d)(\d)(\d)(\d)(\d)?$/.exec(said);
  if (code) {
    const [, a, b, c, d, e] = code;
    const readings = e ? [`${a}.${b}x${c}.${d}x${e}`] : [`${a}.${b}x${c}.${d}x2`, `${a}.${b}x${c}.${d}x3`];
    return misread(
      `the code \`${said}\` can be read in more than one way; write diameter x pitch x blades in inches`,
      ...sound(readings),
    );
  }
  return misread(
    `\`${said}\` is not a propeller size; write diameter x pitch x blades in inches (\`5.1x3.6x3\`), or \`40 mm, 3 blades\``,
  );
}

const sound = (sizes: readonly string[]): string[] => sizes.filter((size) => readPropellerSize(size).ok);

function sized(
  diameter: number,
  pitch: number | undefined,
  blades: number,
  said: string,
  origin: Origin,
): Read<PropellerSize> {
  if (diameter < 0.02 || diameter > 0.5)
    return misread(`a propeller of \`${said}\` is outside 20 mm to 20 in; check the diameter`);
  if (blades < 2 || blades > 8) return misread(`\`${said}\` has ${blades} blades; propellers of this kind have 2 to 8`);
  if (pitch !== undefined && (pitch <= 0 || pitch > 2 * diameter))
    return misread(`the pitch in \`${said}\` is outside what a propeller of this diameter can have; check it`);
  return { ok: true, value: pitch === undefined ? { diameter, blades } : { diameter, pitch, blades }, origin };
}
