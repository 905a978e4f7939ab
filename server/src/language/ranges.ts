/** Folding and growing selections along the parts of a file, not along its blank lines. */
import { type FoldingRange, FoldingRangeKind, type SelectionRange } from 'vscode-languageserver-types';
import type { Slot } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import { positionAt } from '../text/lines';
import { covers, type Span } from '../text/span';
import { rangeOf } from './protocol';

export function folding(file: SourceFile): readonly FoldingRange[] {
  const found: FoldingRange[] = [];
  const walk = (slot: Slot): void => {
    if (slot.keySpan && slot.kids.length > 0 && !slot.node.via) {
      const startLine = positionAt(file.lines, slot.keySpan.start).line;
      const endLine = positionAt(file.lines, lastCharacter(file.text, slot.node.span)).line;
      if (endLine > startLine) found.push({ startLine, endLine });
    }
    for (const kid of slot.kids) walk(kid);
  };
  for (const document of file.documents) if (document.slot) walk(document.slot);
  return [...found, ...comments(file)];
}

/** A block's span reaches over the blank lines behind it; folding should not. */
function lastCharacter(text: string, span: Span): number {
  let end = Math.min(span.end, text.length);
  while (end > span.start && /\s/.test(text[end - 1]!)) end--;
  return Math.max(span.start, end - 1);
}

function comments(file: SourceFile): readonly FoldingRange[] {
  const found: FoldingRange[] = [];
  const rows = file.text.split(/\r\n|\r|\n/);
  let start: number | undefined;
  for (const [i, row] of [...rows, ''].entries()) {
    const comment = /^\s*#/.test(row);
    if (comment) start ??= i;
    else if (start !== undefined) {
      if (i - 1 > start) found.push({ startLine: start, endLine: i - 1, kind: FoldingRangeKind.Comment });
      start = undefined;
    }
  }
  return found;
}

export function selection(file: SourceFile, offset: number): SelectionRange {
  const spans: Span[] = [{ start: 0, end: file.text.length }];
  const walk = (slot: Slot): void => {
    if (slot.node.via) return;
    const whole: Span = {
      start: slot.keySpan?.start ?? slot.node.span.start,
      end: Math.max(
        slot.keySpan?.end ?? 0,
        lastCharacter(file.text, slot.node.span) + (slot.node.span.end > slot.node.span.start ? 1 : 0),
      ),
    };
    if (!covers(whole, offset)) return;
    spans.push(whole);
    if (slot.keySpan && covers(slot.keySpan, offset)) spans.push(slot.keySpan);
    else if (slot.node.is === 'scalar' && covers(slot.node.span, offset)) spans.push(slot.node.span);
    for (const kid of slot.kids) walk(kid);
  };
  for (const document of file.documents) if (document.slot) walk(document.slot);
  let range: SelectionRange | undefined;
  for (const span of spans) {
    // Each must lie within the one before it.
    if (range && !inside(rangeOf(file, span), range.range)) continue;
    range = range ? { range: rangeOf(file, span), parent: range } : { range: rangeOf(file, span) };
  }
  return range!;
}

const before = (a: { line: number; character: number }, b: { line: number; character: number }): boolean =>
  a.line < b.line || (a.line === b.line && a.character <= b.character);
const inside = (inner: SelectionRange['range'], outer: SelectionRange['range']): boolean =>
  before(outer.start, inner.start) && before(inner.end, outer.end);
