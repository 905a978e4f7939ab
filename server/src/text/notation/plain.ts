/** The notations that are hardly more than a word or a number: dates, whole numbers, plain numbers, yes or no. */

import { splitOrigin, unsaid } from '../origin';
import { misread, type Read } from '../quantity';

export function readDate(text: string): Read<string> {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (match) {
    const date = new Date(Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])));
    if (date.getUTCMonth() === Number(match[2]) - 1 && date.getUTCDate() === Number(match[3]))
      return { ok: true, value: match[0], origin: unsaid };
  }
  return misread(`\`${text}\` is not a date; write year, month and day as in \`2026-11-20\``);
}

export function readNumber(text: string): Read<number> {
  const { said, origin } = splitOrigin(text);
  const value = /^[+-]?\d+(?:\.\d+)?$/.test(said) ? Number(said) : Number.NaN;
  return Number.isFinite(value)
    ? { ok: true, value, origin }
    : misread(`\`${said}\` is not a plain number`, ...(/^\d+,\d+$/.test(said) ? [said.replace(',', '.')] : []));
}

export function readCount(text: string): Read<number> {
  const { said, origin } = splitOrigin(text);
  return /^\d{1,6}$/.test(said)
    ? { ok: true, value: Number(said), origin }
    : misread(`\`${said}\` is not a whole number; write digits only`);
}

/** `yes` and `no` by their source text, whatever the YAML version makes of them. */
export function readFlag(text: string): Read<boolean> {
  const { said, origin } = splitOrigin(text);
  if (/^(?:yes|true)$/i.test(said)) return { ok: true, value: true, origin };
  if (/^(?:no|false)$/i.test(said)) return { ok: true, value: false, origin };
  return misread(`\`${said}\` is neither \`yes\` nor \`no\``, 'yes', 'no');
}
