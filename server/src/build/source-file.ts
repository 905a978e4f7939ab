/** One file of the workspace, read: its text, its tree and, for each document in it, what kind of file it says it is. Immutable. */
import { lineStarts } from '../text/lines';
import { readYaml } from '../text/read-yaml';
import type { Span } from '../text/span';
import { entryOf, type Node, type TextFault, textOf } from '../text/tree';
import { type Breach, type FileKind, fieldOf, isFileKind, validate } from '../vocabulary';
import { project, type Slot } from './slot';

export interface FileDocument {
  readonly kind: FileKind | undefined;
  /** What the first key says, when that is no kind of file. */
  readonly saysKind: string | undefined;
  readonly root: Node | undefined;
  readonly span: Span;
  readonly slot: Slot | undefined;
  readonly breaches: readonly Breach[];
  /** JSON pointers of values that are wrong; no fact is read there. */
  readonly wrong: ReadonlySet<string>;
}

export interface SourceFile {
  readonly uri: string;
  readonly text: string;
  readonly lines: readonly number[];
  readonly faults: readonly TextFault[];
  readonly documents: readonly FileDocument[];
}

/** Whether a value is wrong itself; no fact is read there. Most documents have none, and need no address to tell. */
export const isWrong = (slot: Slot, { wrong }: FileDocument): boolean => wrong.size > 0 && wrong.has(slot.pointer);

/** The document that an offset lies in. */
export const documentAt = (file: SourceFile, offset: number): FileDocument | undefined =>
  file.documents.find(({ span }) => offset >= span.start && offset <= span.end);

/** Keywords of a schema that hold against the value itself, not against one of its keys. */
const againstValue: ReadonlySet<string> = new Set(['type', 'quantity', 'notation', 'enum', 'const', 'pattern']);

export function readSourceFile(uri: string, text: string): SourceFile {
  const tree = readYaml(text);
  const documents = tree.documents.map(({ root, span }) => readDocument(root, span));
  return { uri, text, lines: lineStarts(text), faults: tree.faults, documents };
}

function readDocument(root: Node | undefined, span: Span): FileDocument {
  const saysKind = textOf(entryOf(root, 'dryfit')?.value);
  const kind = isFileKind(saysKind) ? saysKind : undefined;
  if (root?.is !== 'map' || !kind)
    return { kind, saysKind, root, span, slot: undefined, breaches: [], wrong: new Set() };
  const { slot, data } = project(root, fieldOf[kind]);
  const breaches = validate(kind, data);
  const wrong = new Set(
    breaches
      .filter((breach) => againstValue.has(breach.keyword) && breach.params.propertyName === undefined)
      .map((breach) => breach.path),
  );
  return { kind, saysKind, root, span, slot, breaches, wrong };
}
