/** `6S`, `4S-6S`, `6S2P`: how many cells in series (and parallel), or the range of cells something takes. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export interface CellRange {
  readonly least: number;
  readonly most: number;
}

export interface CellCount {
  readonly series: number;
  readonly parallel: number;
}

const inRange = (n: number): boolean => n >= 1 && n <= 14;

export function readCellRange(text: string): Read<CellRange> {
  const { said, origin } = splitOrigin(text);
  const match = /^(\d{1,2})S(?:\s*[-–]\s*(\d{1,2})S)?$/.exec(said);
  const loose = /^(\d{1,2})\s*[sS]?(?:\s*(?:-|–|to)\s*(\d{1,2})\s*[sS]?)?$/.exec(said);
  if (!match)
    return misread(
      `\`${said}\` is not a number of cells; write \`6S\` or a range as in \`4S-6S\``,
      ...better(loose?.[1], loose?.[2]),
    );
  const least = Number(match[1]);
  const most = Number(match[2] ?? match[1]);
  if (!inRange(least) || !inRange(most)) return misread(`\`${said}\` is outside 1S to 14S; check the number of cells`);
  if (least > most) return misread(`\`${said}\` runs backwards`, `${most}S-${least}S`);
  return { ok: true, value: { least, most }, origin };
}

const better = (least: string | undefined, most: string | undefined): string[] => {
  if (least === undefined || !inRange(Number(least)) || (most !== undefined && !inRange(Number(most)))) return [];
  return [
    most === undefined || most === least
      ? `${Number(least)}S`
      : Number(least) < Number(most)
        ? `${Number(least)}S-${Number(most)}S`
        : `${Number(most)}S-${Number(least)}S`,
  ];
};

export function readCellCount(text: string): Read<CellCount> {
  const { said, origin } = splitOrigin(text);
  const match = /^(\d{1,2})S(?:(\d)P)?$/.exec(said);
  const loose = /^(\d{1,2})\s*[sS]?\s*(?:(\d)\s*[pP])?$/.exec(said);
  if (!match)
    return misread(
      `\`${said}\` is not a pack's number of cells; write \`6S\`, or \`6S2P\` with two in parallel`,
      ...(loose && inRange(Number(loose[1])) && loose[2] !== '0'
        ? [`${loose[1]}S${loose[2] ? `${loose[2]}P` : ''}`]
        : []),
    );
  const series = Number(match[1]);
  const parallel = Number(match[2] ?? 1);
  if (!inRange(series) || parallel < 1) return misread(`\`${said}\` is outside 1S to 14S; check the number of cells`);
  return { ok: true, value: { series, parallel }, origin };
}
