/** Where a value of the build stands, or would stand, and the edit that writes another one there. Writes nothing by itself and judges no value. */
import type { Craft } from '../build/craft';
import type { Edit } from '../build/finding';
import { kidOf, type Slot } from '../build/slot';
import { documentAt, type SourceFile } from '../build/source-file';
import { indentOf, lineBreakOf } from '../text/lines';

/** Keys from the root down: `motors.weight` is `parts`, `motors`, `weight`. */
export function roadOf(words: string): readonly string[] {
  const keys = words.replace(/^parts\./, '').split('.');
  return keys[0] === 'packs' || keys[0] === 'flight' ? keys : ['parts', ...keys];
}

/** The map that a value at the end of a road stands in; nothing when the build has none. */
export function holderOf(file: SourceFile, craft: Craft, road: readonly string[]): Slot | undefined {
  let holder = documentAt(file, craft.where.span.start)?.slot;
  for (const step of road.slice(0, -1)) holder = kidOf(holder, step);
  return holder;
}

/** The value where it stands, or a line of its own behind the `use:` of the part. */
export function valueEdit(file: SourceFile, holder: Slot, key: string, text: string): Edit {
  const own = kidOf(holder, key);
  if (own && own.node.is === 'scalar') return { file: file.uri, span: own.node.span, text };
  const first = holder.kids.find((kid) => kid.keySpan);
  const end = lineBreakOf(file.text);
  const at = first?.keySpan?.start ?? holder.node.span.start;
  const indent = indentOf(file.text, at);
  // In braces, or where the first key shares its line, the new one goes before it on the same line.
  if (!/^ *$/.test(indent)) return { file: file.uri, span: { start: at, end: at }, text: `${key}: ${text}, ` };
  const behind = kidOf(holder, 'use') ?? first;
  const stop = behind?.node.is === 'scalar' ? lineEnd(file.text, behind.node.span.end) : at;
  return stop === at
    ? { file: file.uri, span: { start: at, end: at }, text: `${key}: ${text}${end}${indent}` }
    : { file: file.uri, span: { start: stop, end: stop }, text: `${end}${indent}${key}: ${text}` };
}

function lineEnd(text: string, from: number): number {
  const at = text.indexOf('\n', from);
  if (at < 0) return text.length;
  return text[at - 1] === '\r' ? at - 1 : at;
}
