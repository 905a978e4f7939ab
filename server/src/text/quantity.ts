/** Reads one quantity, a number with its unit and perhaps its origin: `31.8 g (weighed 2026-10-02)`. Never guesses a unit. */
import { kept } from './kept';
import { type Origin, originWords, splitOrigin } from './origin';
import { type Dimension, dimensionNames, dimensionOfUnit, factorOf, mayBeBare, unitInOtherCase } from './units';

/** Why a text is not the value that is wanted here; `better` is a text that would be. */
export interface Misread {
  readonly why: string;
  readonly better?: readonly string[];
}

export type Read<T> =
  | { readonly ok: true; readonly value: T; readonly origin: Origin }
  | ({ readonly ok: false } & Misread);

export const misread = (why: string, ...better: string[]): { ok: false } & Misread => ({ ok: false, why, better });

const number = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d{1,2})?/i;

const readersByDimension = new Map<Dimension, (text: string) => Read<number>>();

/** @param usual the unit to offer when none was written, as in the field's example */
export function readQuantity(text: string, dimension: Dimension, usual?: string): Read<number> {
  if (usual !== undefined) return readAnew(text, dimension, usual);
  let read = readersByDimension.get(dimension);
  if (!read) {
    read = kept((one) => readAnew(one, dimension));
    readersByDimension.set(dimension, read);
  }
  return read(text);
}

function readAnew(text: string, dimension: Dimension, usual?: string): Read<number> {
  const { said, origin, odd } = splitOrigin(text);
  if (odd !== undefined)
    return misread(
      `\`(${odd})\` does not say where the value came from. Use one of ${originWords.join(', ')}, with a date if you like`,
    );
  const read = readBare(said, dimension, usual);
  return read.ok ? { ok: true, value: read.value, origin } : read;
}

/** The same without an origin; for the parts of a notation. */
export function readBare(
  said: string,
  dimension: Dimension,
  usual?: string,
): { ok: true; value: number } | ({ ok: false } & Misread) {
  const digits = number.exec(said)?.[0];
  const example = usual ? `, as in \`${exampleOf(usual)}\`` : '';
  if (digits === undefined)
    return misread(`\`${said}\` is not ${dimensionNames[dimension]}; write a number with its unit${example}`);
  const comma = /^([+-]?\d+),(\d+)\s*(.*)$/.exec(said);
  if (comma) {
    const pointed =
      `${comma[1]}.${comma[2]} ${comma[3] || (usual && !mayBeBare(dimension) ? (usualUnit(usual) ?? '') : '')}`.trim();
    return misread(
      `\`${said}\` has a decimal comma; write a decimal point`,
      ...(readBare(pointed, dimension).ok ? [pointed] : []),
    );
  }
  const unit = said.slice(digits.length).trim();
  const value = Number(digits);
  if (!Number.isFinite(value) || Math.abs(value) > 1e9)
    return misread(`\`${digits}\` is out of any range this trade uses; check the number`);
  if (unit === '') {
    if (mayBeBare(dimension)) return { ok: true, value };
    const unitWanted = usual ? usualUnit(usual) : undefined;
    return misread(
      `\`${said}\` has no unit; ${dimensionNames[dimension]} needs one${example}`,
      ...(unitWanted ? [`${digits} ${unitWanted}`] : []),
    );
  }
  const factor = factorOf(dimension, unit);
  if (factor !== undefined) return { ok: true, value: value * factor };
  const spelled = unitInOtherCase(dimension, unit);
  if (spelled) return misread(`\`${unit}\` is written \`${spelled}\``, `${digits} ${spelled}`);
  const other = dimensionOfUnit(unit);
  if (other)
    return misread(
      `\`${said}\` is ${dimensionNames[other]}, and ${dimensionNames[dimension]} is wanted here${example}`,
    );
  return misread(
    `\`${unit}\` is not a unit of ${dimensionNames[dimension].replace(/^an? /, '')}${example ? `; write it${example}` : ''}`,
  );
}

const exampleOf = (usual: string): string => splitOrigin(usual).said;

const usualUnit = (usual: string): string | undefined => exampleOf(usual).replace(number, '').trim() || undefined;
