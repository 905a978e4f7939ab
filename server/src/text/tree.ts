/** The tree of a YAML text as the builder wrote it: source text and exact spans, aliases and merge keys followed. Judges nothing. */
import type { Span } from './span';

/** What every node knows: where it is written and, when it was reached through an alias or a merge key, where that stands. */
interface Written {
  readonly span: Span;
  readonly via?: Span;
}

export interface ScalarNode extends Written {
  readonly is: 'scalar';
  /** What the author wrote: the source text of a plain scalar (`0802`, not 802), the content of a quoted or block one. */
  readonly text: string;
  readonly style: 'plain' | 'quoted' | 'block';
}

export interface EmptyNode extends Written {
  readonly is: 'empty';
  /** Something was written, but it could not be read; that is told apart. */
  readonly broken?: boolean;
}

export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Node;
  readonly via?: Span;
}

export interface MapNode extends Written {
  readonly is: 'map';
  readonly flow: boolean;
  readonly entries: readonly Entry[];
}

export interface ListNode extends Written {
  readonly is: 'list';
  readonly flow: boolean;
  readonly items: readonly Node[];
}

export type Node = ScalarNode | EmptyNode | MapNode | ListNode;

/** Something wrong with the text as YAML, before any meaning is looked at. */
export interface TextFault {
  readonly id:
    | 'yaml-syntax'
    | 'key-twice'
    | 'alias-unknown'
    | 'text-cut-short'
    | 'file-too-large'
    | 'file-too-deep'
    | 'not-text';
  readonly span: Span;
  readonly message: string;
  readonly related?: { readonly span: Span; readonly message: string };
  readonly fix?: { readonly title: string; readonly span: Span; readonly text: string };
}

export interface TextDocument {
  readonly span: Span;
  readonly root: Node | undefined;
}

export interface TextTree {
  readonly documents: readonly TextDocument[];
  readonly faults: readonly TextFault[];
}

export const entryOf = (node: Node | undefined, key: string): Entry | undefined =>
  node?.is === 'map' ? node.entries.find((entry) => entry.key === key) : undefined;

/** The entries of a map, none for anything else. */
export const entriesOf = (node: Node | undefined): readonly Entry[] => (node?.is === 'map' ? node.entries : []);

export const textOf = (node: Node | undefined): string | undefined => (node?.is === 'scalar' ? node.text : undefined);
