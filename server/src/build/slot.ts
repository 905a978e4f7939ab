/** Lays a field table over a tree: each value with the field it fills, and the plain data that the validators judge. Judges nothing itself. */
import { splitOrigin } from '../text/origin';
import type { Span } from '../text/span';
import { type Entry, entryOf, type ListNode, type MapNode, type Node, type ScalarNode, textOf } from '../text/tree';
import type { Field, ListField, MapField } from '../vocabulary/field';

export interface Slot {
  readonly key: string;
  readonly keySpan: Span | undefined;
  readonly node: Node;
  /** Absent under a key that no schema knows. */
  readonly field: Field | undefined;
  /** JSON pointer from the root of the document, as the validators report it. */
  readonly pointer: string;
  /** The same with dots, as people and fingerprints name it: `parts.motors.kv`. */
  readonly path: string;
  readonly kids: readonly Slot[];
}

interface Projected {
  readonly slot: Slot;
  /** `undefined` where nothing was said. */
  readonly data: unknown;
}

export const project = (root: MapNode, field: MapField): Projected => lay(root, field, '', undefined, top);

export const kidOf = (slot: Slot | undefined, key: string): Slot | undefined =>
  slot?.kids.find((kid) => kid.key === key);

/** The fields that a map may have here: by its kind, where its kind decides. */
export function fieldsAt(field: Field | undefined, node: Node): MapField | undefined {
  if (field?.is === 'map') return field;
  if (field?.is !== 'by-kind') return undefined;
  const kind = textOf(entryOf(node, 'kind')?.value);
  return kind !== undefined && Object.hasOwn(field.kinds, kind) ? field.kinds[kind] : undefined;
}

/** Where a slot stands in its document, in both spellings. */
interface Address {
  readonly pointer: string;
  readonly path: string;
}

const top: Address = { pointer: '', path: '' };

function below(at: Address, key: string): Address {
  const escaped = key.includes('~') || key.includes('/') ? key.replace(/~/g, '~0').replace(/\//g, '~1') : key;
  return { pointer: `${at.pointer}/${escaped}`, path: at.path === '' ? key : `${at.path}.${key}` };
}

function lay(node: Node, field: Field | undefined, key: string, keySpan: Span | undefined, at: Address): Projected {
  const { pointer, path } = at;
  if (node.is === 'empty') return { slot: { key, keySpan, node, field, pointer, path, kids: [] }, data: undefined };
  if (node.is === 'map') return layMap(node, field, key, keySpan, at);
  if (field?.is === 'list')
    return layList(node, field.commaList ? splitAtCommas(node) : [node], field, key, keySpan, at);
  if (node.is === 'list') return layList(node, [], undefined, key, keySpan, at);
  const data = field?.is === 'term' ? splitOrigin(node.text).said : node.text;
  return { slot: { key, keySpan, node, field, pointer, path, kids: [] }, data };
}

function layMap(
  node: MapNode,
  field: Field | undefined,
  key: string,
  keySpan: Span | undefined,
  at: Address,
): Projected {
  const known = fieldsAt(field, node);
  const kids: Slot[] = [];
  const data: Record<string, unknown> = {};
  for (const entry of node.entries) {
    const kid = lay(entry.value, fieldOfEntry(entry, field, known), entry.key, entry.keySpan, below(at, entry.key));
    kids.push(kid.slot);
    if (kid.data === undefined) continue;
    // A plain object must not take `__proto__` for its own prototype.
    if (entry.key === '__proto__') Object.defineProperty(data, entry.key, { value: kid.data, enumerable: true });
    else data[entry.key] = kid.data;
  }
  return { slot: { key, keySpan, node, field, ...at, kids }, data };
}

function fieldOfEntry(entry: Entry, field: Field | undefined, known: MapField | undefined): Field | undefined {
  if (known) return Object.hasOwn(known.fields, entry.key) ? known.fields[entry.key] : undefined;
  if (field?.is === 'table') return field.of;
  return undefined;
}

/** @param pieces what a scalar stands for where a list is wanted */
function layList(
  node: ListNode | ScalarNode,
  pieces: readonly Node[],
  field: ListField | undefined,
  key: string,
  keySpan: Span | undefined,
  at: Address,
): Projected {
  const items = node.is === 'list' ? node.items : pieces;
  const kids = items.map((item, i) => lay(item, field?.of, String(i), undefined, below(at, String(i))));
  return {
    slot: { key, keySpan, node, field, ...at, kids: kids.map((kid) => kid.slot) },
    data: kids.map((kid) => kid.data ?? ''),
  };
}

/** `1.5 mm, 2.0 mm` as two values, each with its own span; commas in brackets don't count. */
function splitAtCommas(node: ListNode | ScalarNode): readonly Node[] {
  if (node.is === 'list') return [];
  const pieces = [...node.text.matchAll(/(?:\([^)]*\)|[^,(])+/g)];
  if (pieces.length < 2) return [node];
  return pieces.map((piece) => {
    const lead = piece[0].length - piece[0].trimStart().length;
    const text = piece[0].trim();
    const start = node.span.start + (piece.index ?? 0) + lead;
    // Only a plain one-line text has its characters where the file has them.
    const exact = node.style === 'plain' && node.span.end - node.span.start === node.text.length;
    return { ...node, text, span: exact ? { start, end: start + text.length } : node.span };
  });
}
