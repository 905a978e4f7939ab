/** The outline of a file: its parts, packs and sections, in the order of the file. */
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-types';
import { kidOf, type Slot } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import { isLeaf } from '../vocabulary/field';
import { rangeOf } from './protocol';

export function symbols(file: SourceFile): readonly DocumentSymbol[] {
  return file.documents.flatMap((document) => document.slot?.kids.flatMap((kid) => symbolOf(file, kid, 0)) ?? []);
}

function symbolOf(file: SourceFile, slot: Slot, depth: number): readonly DocumentSymbol[] {
  // What came by an alias or a merge key stands elsewhere and would break the nesting of ranges.
  if (!slot.keySpan || slot.node.via || slot.node.span.end < slot.keySpan.start) return [];
  const use = kidOf(slot, 'use')?.node;
  const said = slot.node.is === 'scalar' ? slot.node.text : use?.is === 'scalar' ? use.text : '';
  const end = Math.max(slot.keySpan.end, slot.node.span.end);
  const children = depth < 3 ? slot.kids.flatMap((kid) => symbolOf(file, kid, depth + 1)) : [];
  return [
    {
      name: slot.key || '?',
      detail: said.slice(0, 60),
      kind:
        !slot.field || isLeaf(slot.field)
          ? SymbolKind.Property
          : depth === 0
            ? SymbolKind.Namespace
            : SymbolKind.Object,
      range: rangeOf(file, { start: slot.keySpan.start, end }),
      selectionRange: rangeOf(file, slot.keySpan),
      children: children as DocumentSymbol[],
    },
  ];
}
