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

/** The addresses are spelled out only for those who ask: of some thousand values, few are pointed at. */
class LaidSlot implements Slot {
  kids: readonly Slot[] = noKids;

  constructor(
    readonly key: string,
    readonly keySpan: Span | undefined,
    readonly node: Node,
    readonly field: Field | undefined,
    private readonly above: LaidSlot | undefined,
  ) {}

  get pointer(): string {
    if (!this.above) return '';
    const { key } = this;
    const escaped = key.includes('~') || key.includes('/') ? key.replace(/~/g, '~0').replace(/\//g, '~1') : key;
    return `${this.above.pointer}/${escaped}`;
  }

  get path(): string {
    const path = this.above?.path ?? '';
    return path === '' ? this.key : `${path}.${this.key}`;
  }
}

const noKids: readonly Slot[] = [];

type Data = { [key: string | number]: unknown };

/** The slots of a document, and what was said as plain data. */
export function project(root: MapNode, field: MapField): { readonly slot: Slot; readonly data: unknown } {
  const data: Data = {};
  const slot = new LaidSlot('', undefined, root, field, undefined);
  lay(slot, data, '');
  return { slot, data: data[''] };
}

export const kidOf = (slot: Slot | undefined, key: string): Slot | undefined => {
  if (slot) for (const kid of slot.kids) if (kid.key === key) return kid;
  return undefined;
};

/** The fields that a map may have here: by its kind, where its kind decides. */
export function fieldsAt(field: Field | undefined, node: Node): MapField | undefined {
  if (field?.is === 'map') return field;
  if (field?.is !== 'by-kind') return undefined;
  const kind = textOf(entryOf(node, 'kind')?.value);
  return kind !== undefined && Object.hasOwn(field.kinds, kind) ? field.kinds[kind] : undefined;
}

/** Fills a slot's kids, and what is said there into the data around it; nothing for what is empty. */
function lay(slot: LaidSlot, around: Data, at: string | number): void {
  const { node, field } = slot;
  if (node.is === 'empty') return;
  if (node.is === 'map') layMap(slot, node, around, at);
  else if (field?.is === 'list') layList(slot, field.commaList ? splitAtCommas(node) : [node], field, around, at);
  else if (node.is === 'list') layList(slot, [], undefined, around, at);
  else around[at] = field?.is === 'term' ? splitOrigin(node.text).said : node.text;
}

function layMap(slot: LaidSlot, node: MapNode, around: Data, at: string | number): void {
  const known = fieldsAt(slot.field, node);
  const kids: Slot[] = [];
  const data: Data = {};
  for (const entry of node.entries) {
    const kid = new LaidSlot(entry.key, entry.keySpan, entry.value, fieldOfEntry(entry, slot.field, known), slot);
    kids.push(kid);
    if (entry.key === '__proto__') layPrototype(kid, data);
    else lay(kid, data, entry.key);
  }
  slot.kids = kids;
  around[at] = data;
}

/** A plain object must not take `__proto__` for its own prototype. */
function layPrototype(slot: LaidSlot, around: Data): void {
  const own: Data = {};
  lay(slot, own, 0);
  if (0 in own) Object.defineProperty(around, slot.key, { value: own[0], enumerable: true });
}

function fieldOfEntry(entry: Entry, field: Field | undefined, known: MapField | undefined): Field | undefined {
  if (known) return Object.hasOwn(known.fields, entry.key) ? known.fields[entry.key] : undefined;
  if (field?.is === 'table') return field.of;
  return undefined;
}

/** @param pieces what a scalar stands for where a list is wanted */
function layList(
  slot: LaidSlot,
  pieces: readonly Node[],
  field: ListField | undefined,
  around: Data,
  at: string | number,
): void {
  const items = slot.node.is === 'list' ? slot.node.items : pieces;
  const data: unknown[] = items.map(() => '');
  slot.kids = items.map((item, i) => {
    const kid = new LaidSlot(String(i), undefined, item, field?.of, slot);
    lay(kid, data as unknown as Data, i);
    return kid;
  });
  around[at] = data;
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
