/** The lines of an entry of a file as they are written, for moving them elsewhere. Changes no text. */
import type { Slot } from '../build/slot';
import { indentOf } from '../text/lines';
import type { Span } from '../text/span';

/** From the start of the first line to behind the end of the last, with a comment that stands behind the value. */
export function wholeLines(text: string, span: Span): Span {
  const start = text.lastIndexOf('\n', span.start - 1) + 1;
  let last = span.end;
  while (last > span.start && /\s/.test(text[last - 1]!)) last--;
  const next = text.indexOf('\n', last);
  return { start, end: next === -1 ? text.length : next + 1 };
}

/** The lines of an entry, moved to another indentation. */
export function entryLines(text: string, slot: Slot, indent: string): readonly string[] {
  const span = wholeLines(text, { start: slot.keySpan!.start, end: Math.max(slot.node.span.end, slot.keySpan!.end) });
  const before = indentOf(text, slot.keySpan!.start).length;
  return text
    .slice(span.start, span.end)
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((line) =>
      line.trim() === '' ? '' : indent + line.slice(Math.min(before, line.length - line.trimStart().length)),
    );
}
