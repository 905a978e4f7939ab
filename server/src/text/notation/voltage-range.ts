/** `7 V - 26 V`, `5 V`, `2S-6S`: the supply voltages a device takes. Cells are kept as cells, since a listing's `6S` leaves the chemistry open. */

import { splitOrigin } from '../origin';
import { misread, type Read, readBare } from '../quantity';
import { readCellRange } from './cells';

export interface SupplyRange {
  /** V; for a range in cells the lowest sensible voltage, 3.3 V a cell */
  readonly least: number;
  /** V; for a range in cells the full voltage of ordinary LiPo, 4.2 V a cell */
  readonly most: number;
  /** The most cells when the range was given in cells: above 4.2 V a cell nothing was promised. */
  readonly cells?: number;
}

export function readSupplyRange(text: string): Read<SupplyRange> {
  const { said, origin } = splitOrigin(text);
  if (/\dS\b/.test(said)) {
    const cells = readCellRange(said);
    if (!cells.ok) return cells;
    return {
      ok: true,
      value: { least: cells.value.least * 3.3, most: cells.value.most * 4.2, cells: cells.value.most },
      origin,
    };
  }
  const [first, second, ...more] = said.split(/\s*(?:–|(?<=\S)\s*-\s*|\bto\b)\s*/);
  if (first === undefined || more.length > 0)
    return misread(`\`${said}\` is not a supply range; write \`7 V - 26 V\`, \`5 V\` or \`2S-6S\``);
  if (second === undefined) {
    const one = readBare(first, 'voltage', '5 V');
    if (!one.ok) return one;
    // A single figure names a rail; rails are trimmed to about a tenth. Common practice.
    return { ok: true, value: { least: one.value * 0.9, most: one.value * 1.1 }, origin };
  }
  const low = readBare(/V$/.test(first) ? first : `${first} V`, 'voltage', '7 V');
  const high = readBare(second, 'voltage', '26 V');
  if (!low.ok) return misread(low.why);
  if (!high.ok) return misread(high.why);
  if (low.value > high.value) return misread(`\`${said}\` runs backwards`, `${second} - ${first}`);
  return { ok: true, value: { least: low.value, most: high.value }, origin };
}
