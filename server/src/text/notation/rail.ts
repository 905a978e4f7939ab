/** `battery`, `5V`, `9V`, `video-transmitter 5V`: what a device takes its power from. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

/** `volts` is absent for the battery itself. `of` names the part whose regulator it is; without it the flight controller's. */
export interface Rail {
  readonly volts?: number;
  readonly of?: string;
}

export function readRail(text: string): Read<Rail> {
  const { said, origin } = splitOrigin(text);
  if (said === 'battery') return { ok: true, value: {}, origin };
  const match = /^(?:([a-z][a-z-]*)\s+)?(\d{1,2}(?:\.\d)?)\s?V$/.exec(said);
  if (match)
    return {
      ok: true,
      value: match[1] ? { volts: Number(match[2]), of: match[1] } : { volts: Number(match[2]) },
      origin,
    };
  const loose = /^(\d{1,2}(?:\.\d)?)\s*v?$/i.exec(said);
  return misread(
    `\`${said}\` is not a supply; write \`battery\`, a rail of the flight controller as in \`5V\`, or a part's own output as in \`video-transmitter 5V\``,
    ...(loose ? [`${loose[1]}V`] : []),
  );
}
