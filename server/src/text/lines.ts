/** Turns offsets into lines and characters and back; the only place that counts line breaks. */
export interface LinePosition {
  readonly line: number;
  readonly character: number;
}

/** Offsets at which each line starts; `\n`, `\r\n` and a lone `\r` end a line, as in LSP. */
export function lineStarts(text: string): readonly number[] {
  const starts = [0];
  if (text.includes('\r')) for (const end of text.matchAll(/\r\n?|\n/g)) starts.push(end.index + end[0].length);
  else for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) starts.push(end + 1);
  return starts;
}

export function positionAt(starts: readonly number[], offset: number): LinePosition {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low, character: Math.max(0, offset - starts[low]!) };
}

/** The offset of a position; a position outside the text is held to the nearest place inside it. */
export function offsetAt(text: string, starts: readonly number[], position: LinePosition): number {
  if (position.line < 0) return 0;
  const start = starts[position.line];
  if (start === undefined) return text.length;
  const next = starts[position.line + 1] ?? text.length + 1;
  return Math.min(start + Math.max(0, position.character), Math.max(start, next - 1), text.length);
}

/** The line break a text uses, for what is written into it. */
export const lineBreakOf = (text: string): string => (text.includes('\r\n') ? '\r\n' : '\n');

/** From the start of its line to the offset. */
export function indentOf(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  return text.slice(start, offset);
}
