/** Finds what stands at an offset of a file: the slot, its parents, and whether it is the key or the value. Answers from the tree only. */

import type { Slot } from '../build/slot';
import type { FileDocument, SourceFile } from '../build/source-file';
import { covers } from '../text/span';

export interface Located {
  readonly document: FileDocument;
  readonly slot: Slot;
  /** From the root down to the slot's parent. */
  readonly parents: readonly Slot[];
  readonly on: 'key' | 'value';
}

export function locate(file: SourceFile, offset: number): Located | undefined {
  for (const document of file.documents) {
    if (!document.slot) continue;
    const found = within(document, document.slot, offset, []);
    if (found) return found;
  }
  return undefined;
}

function within(document: FileDocument, slot: Slot, offset: number, parents: readonly Slot[]): Located | undefined {
  if (slot.keySpan && covers(slot.keySpan, offset)) return { document, slot, parents, on: 'key' };
  for (const kid of slot.kids) {
    const found = within(document, kid, offset, [...parents, slot]);
    if (found) return found;
  }
  const { node } = slot;
  if (node.via && covers(node.via, offset)) return { document, slot, parents, on: 'value' };
  if (node.is === 'scalar' && !node.via && covers(node.span, offset)) return { document, slot, parents, on: 'value' };
  return undefined;
}

/** Keys from the root down, as in `['parts', 'motors', 'kv']`. */
export const pathOf = (located: Located): readonly string[] =>
  [...located.parents, located.slot].map((slot) => slot.key).slice(1);
