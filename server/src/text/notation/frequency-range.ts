/** `5.6 GHz - 6.0 GHz`: the span a radio part works over. */

import { splitOrigin } from '../origin';
import { misread, type Read, readBare } from '../quantity';

/** Hz */
export interface FrequencyRange {
  readonly least: number;
  readonly most: number;
}

export function readFrequencyRange(text: string): Read<FrequencyRange> {
  const { said, origin } = splitOrigin(text);
  const match = /^([\d.]+)\s*([kMG]?Hz)?\s*[-–]\s*([\d.]+)\s*([kMG]?Hz)$/.exec(said);
  if (!match) return misread(`\`${said}\` is not a range of frequencies; write \`5.6 GHz - 6.0 GHz\``);
  const low = readBare(`${match[1]} ${match[2] ?? match[4]}`, 'frequency');
  const high = readBare(`${match[3]} ${match[4]}`, 'frequency');
  if (!low.ok) return misread(low.why);
  if (!high.ok) return misread(high.why);
  if (low.value > high.value) return misread(`\`${said}\` runs backwards`);
  return { ok: true, value: { least: low.value, most: high.value }, origin };
}
