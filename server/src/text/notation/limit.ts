/** `65 A for 10 s`, `42 A`: a current that may flow for a time. Without a time it is the listing's bare figure and the time is unknown. */

import { splitOrigin } from '../origin';
import { misread, type Read, readBare } from '../quantity';

export interface ShortCurrent {
  /** A */
  readonly current: number;
  /** s */
  readonly duration?: number;
}

export function readShortCurrent(text: string): Read<ShortCurrent> {
  const { said, origin } = splitOrigin(text);
  const match = /^(.*?)(?:\s+for\s+(.*))?$/s.exec(said);
  const current = readBare(match?.[1] ?? said, 'current', '45 A');
  const behind = match?.[2] === undefined ? '' : ` for ${match[2]}`;
  if (!current.ok)
    return misread(
      current.why,
      ...(current.better ?? []).map((better) => `${better}${behind}`).filter((better) => readShortCurrent(better).ok),
    );
  if (match?.[2] === undefined) return { ok: true, value: { current: current.value }, origin };
  const duration = readBare(match[2], 'time', '10 s');
  return duration.ok
    ? { ok: true, value: { current: current.value, duration: duration.value }, origin }
    : misread(duration.why, ...(duration.better ?? []).map((better) => `${match[1]} for ${better}`));
}
