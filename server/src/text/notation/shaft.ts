/** `M5`, `1.5 mm press`, `T-mount 1.5 mm`, `5 mm`: how a motor holds a propeller, and what a propeller's hub is made for. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

/** `diameter` in m: of the shaft, or of the hole in the hub. */
export type Shaft =
  | { readonly is: 'threaded'; readonly diameter: number }
  | { readonly is: 'press'; readonly diameter: number }
  | { readonly is: 't-mount'; readonly diameter?: number };

export function readShaft(text: string): Read<Shaft> {
  const { said, origin } = splitOrigin(text);
  const threaded = /^M(\d(?:\.\d)?)$/.exec(said);
  if (threaded) return { ok: true, value: { is: 'threaded', diameter: Number(threaded[1]) / 1000 }, origin };
  const press = /^(\d(?:\.\d{1,2})?)\s*mm press$/.exec(said);
  if (press) return { ok: true, value: { is: 'press', diameter: Number(press[1]) / 1000 }, origin };
  const tMount = /^T-mount(?:\s+(\d(?:\.\d{1,2})?)\s*mm)?$/i.exec(said);
  if (tMount)
    return {
      ok: true,
      value: tMount[1] ? { is: 't-mount', diameter: Number(tMount[1]) / 1000 } : { is: 't-mount' },
      origin,
    };
  const bare = /^(\d(?:\.\d{1,2})?)\s*mm$/.exec(said);
  if (bare) {
    const diameter = Number(bare[1]) / 1000;
    // A bare bore of 2 mm and less is pushed onto the shaft, a larger one is held by a nut. Common practice.
    return { ok: true, value: diameter <= 0.002 ? { is: 'press', diameter } : { is: 'threaded', diameter }, origin };
  }
  return misread(
    `\`${said}\` does not say how the propeller is held; write \`M5\`, \`1.5 mm press\` or \`T-mount 1.5 mm\``,
  );
}
