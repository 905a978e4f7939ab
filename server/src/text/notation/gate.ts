/** Reads a passed gate: its date, and in brackets the print of what it vouches for, as in `2026-11-20 (a1b2c3)`. Knows no gate. */
import { unsaid } from '../origin';
import { misread, type Read } from '../quantity';
import { readDate } from './plain';

export interface PassedGate {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly print?: string;
}

export function readGate(text: string): Read<PassedGate> {
  const match = /^(\S+?)(?:\s*\(([^()]*)\))?$/.exec(text.trim());
  const date = readDate(match?.[1] ?? text);
  if (!date.ok) return date;
  const print = match?.[2]?.trim();
  if (print === undefined) return { ok: true, value: { date: date.value }, origin: unsaid };
  return /^[0-9a-f]{6}$/.test(print)
    ? { ok: true, value: { date: date.value, print }, origin: unsaid }
    : misread(
        `\`(${print})\` is no print of a gate; it has six signs as in \`2026-11-20 (a1b2c3)\`. Leave it out and take the fix that is offered`,
        date.value,
      );
}
