/** Reads facts out of layered slots: what the build says first, then what the library says. Skips whatever was found wrong. */
import { readers } from '../text/notation';
import { type Origin, splitOrigin, unsaid } from '../text/origin';
import { type Read, readQuantity } from '../text/quantity';
import type { ScalarNode } from '../text/tree';
import type { Field, LeafField, ListField, MapField, TableField } from '../vocabulary/field';
import type { Fact, Many, Table } from './fact';
import { everyKey } from './pieces';
import { isSamePlace, type Place } from './place';
import { fieldsAt, kidOf, type Slot } from './slot';
import { type FileDocument, isWrong } from './source-file';

/** One place that speaks of a thing. Earlier layers win field by field. */
export interface Layer {
  readonly slot: Slot;
  readonly document: FileDocument;
  readonly file: string;
  /** The `use:` in the build that leads here; absent for the build's own words. */
  readonly through?: Place;
}

/**
 * Finds the library part that a `use:` names; nothing when there is none.
 * @param at the part in the build, for trying another one there; absent inside a library
 */
export type FindPart = (id: string | undefined, at?: Slot) => Layer | undefined;

export type FactMap = { readonly where?: Place; readonly used?: Place; readonly [key: string]: unknown };

/** The facts of a map, each read when it is first looked at: of a craft's some hundred, an edit has few looked at. `use:` of any layer is followed and its part laid underneath. */
export function readMap(layers: readonly Layer[], find: FindPart): FactMap | undefined {
  const all = followUses(layers, find);
  const first = all[0];
  if (!first) return undefined;
  const field = all.map((layer) => fieldsAt(layer.slot.field, layer.slot.node)).find((known) => known !== undefined);
  const known: Record<string, unknown> = { where: placeOf(first) };
  const use = kidOf(first.slot, 'use');
  if (use && field?.fields.use) known.used = first.through ?? placeOf({ ...first, slot: use });
  if (!field) return known as FactMap;
  return new Proxy<Unread>({ known, all, field, find }, reading) as unknown as FactMap;
}

/** A map of facts not all of which have been read. */
interface Unread {
  readonly known: Record<string, unknown>;
  readonly all: readonly Layer[];
  readonly field: MapField;
  readonly find: FindPart;
  note?: Note;
}

/** Told which key is looked at, or `everyKey`. */
export type Note = (key: string) => void;

/** Under this key a map of facts gives what it is made of. */
const inside = Symbol('inside');

/** From outside an ordinary object that holds its facts. */
const reading: ProxyHandler<Unread> = {
  get(unread, key) {
    if (typeof key !== 'string') return key === inside ? unread : undefined;
    unread.note?.(key);
    return factAt(unread, key);
  },
  has(unread, key) {
    if (typeof key !== 'string') return false;
    unread.note?.(key);
    return factAt(unread, key) !== undefined;
  },
  ownKeys(unread) {
    unread.note?.(everyKey);
    return [...keysOf(unread)].filter((key) => factAt(unread, key) !== undefined);
  },
  getOwnPropertyDescriptor(unread, key) {
    const value = typeof key === 'string' ? factAt(unread, key) : undefined;
    return value === undefined ? undefined : { value, enumerable: true, configurable: true, writable: false };
  },
};

function factAt(unread: Unread, key: string): unknown {
  const { known, all, field, find } = unread;
  if (Object.hasOwn(known, key)) return known[key];
  let value: unknown;
  for (const [depth, layer] of all.entries()) {
    const kid = kidOf(layer.slot, key);
    if (!kid || !counts(kid, layer, field)) continue;
    value = readKid(kid, all, depth, field, find);
    break;
  }
  known[key] = value;
  return value;
}

/** All facts of a map, as a plain object of their own. */
export function readWhole(facts: object): Record<string, unknown> {
  const unread = unreadOf(facts);
  if (!unread) return { ...facts };
  const found: Record<string, unknown> = {};
  for (const key of keysOf(unread)) {
    const value = factAt(unread, key);
    if (value !== undefined) found[key] = value;
  }
  return found;
}

function keysOf({ known, all }: Unread): ReadonlySet<string> {
  const keys = new Set(Object.keys(known));
  for (const { slot } of all) for (const kid of slot.kids) keys.add(kid.key);
  return keys;
}

const unreadOf = (facts: object | undefined): Unread | undefined =>
  (facts as { readonly [inside]?: Unread } | undefined)?.[inside];

/** Has a part or a table of parts tell from now on what of it is looked at. */
export function noteLooks(facts: object, note: Note): void {
  const unread = facts instanceof LaidTable ? facts : unreadOf(facts);
  if (unread) unread.note = note;
}

/** A map of facts with others underneath, for the keys that it doesn't say itself. */
export function underlaid<T extends object>(facts: T, under: Readonly<Record<string, unknown>>): T {
  const unread = unreadOf(facts);
  if (!unread) return { ...under, ...facts };
  const known: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(under)) known[key] = factAt(unread, key) ?? value;
  return new Proxy<Unread>({ ...unread, known: { ...unread.known, ...known } }, reading) as unknown as T;
}

const counts = (kid: Slot, layer: Layer, field: MapField): boolean =>
  kid.node.is !== 'empty' &&
  kid.field !== undefined &&
  !isWrong(kid, layer.document) &&
  Object.hasOwn(field.fields, kid.key);

/** One key of a map, from the layer that says it first; a map or a table also takes what lies underneath. */
function readKid(kid: Slot, all: readonly Layer[], depth: number, field: MapField, find: FindPart): unknown {
  const { document, file, through } = all[depth]!;
  const own: Layer = { slot: kid, document, file, through };
  const { is } = kid.field!;
  const isLayered = is === 'map' || is === 'by-kind' || is === 'table';
  const under = isLayered
    ? all.slice(depth + 1).flatMap((layer) => {
        const same = kidOf(layer.slot, kid.key);
        return same && counts(same, layer, field) ? [{ ...layer, slot: same }] : [];
      })
    : [];
  return through && under.length === 0 ? readAgain(own, through, find) : readValue([own, ...under], kid.field!, find);
}

/** What a library's slot said when it was last read, and the `use:` it was read through. */
const lastRead = new WeakMap<Slot, { readonly through: Place; readonly value: unknown }>();

/** Most of a build is its library parts, which an edit of the build leaves as they were. */
function readAgain(layer: Layer, through: Place, find: FindPart): unknown {
  const known = lastRead.get(layer.slot);
  if (known && isSamePlace(known.through, through)) return known.value;
  const value = readValue([layer], layer.slot.field!, find);
  // What leads on to another part may change without this one.
  if (!leadsOn(layer.slot)) lastRead.set(layer.slot, { through, value });
  return value;
}

function leadsOn(slot: Slot): boolean {
  return slot.kids.some((kid) => kid.key === 'use' || leadsOn(kid));
}

function followUses(layers: readonly Layer[], find: FindPart): readonly Layer[] {
  const all: Layer[] = [];
  for (const layer of layers) {
    if (layer.slot.node.is !== 'map') continue;
    all.push(layer);
    let seen: Set<Slot> | undefined;
    let at = layer;
    for (;;) {
      const use = kidOf(at.slot, 'use');
      const named =
        use?.node.is === 'scalar' && use.field?.is === 'text' && use.field.reference === 'part'
          ? use.node.text
          : undefined;
      const found = find(named, at === layer && layer.through === undefined ? layer.slot : undefined);
      // A part of another kind has fields of other meanings; the wrong `use:` is a finding of its own.
      if (
        !found ||
        seen?.has(found.slot) ||
        fieldsAt(found.slot.field, found.slot.node)?.fields !== fieldsAt(layer.slot.field, layer.slot.node)?.fields
      )
        break;
      seen = (seen ?? new Set()).add(found.slot);
      at = { ...found, through: layer.through ?? placeOf({ ...layer, slot: use ?? layer.slot }) };
      all.push(at);
    }
  }
  return all;
}

function readValue(layers: readonly Layer[], field: Field, find: FindPart): unknown {
  const first = layers[0]!;
  if (field.is === 'map' || field.is === 'by-kind') return readMap(layers, find);
  if (field.is === 'table') return readTable(layers, field, find);
  if (field.is === 'list') return readList(first, field, find);
  return first.slot.node.is === 'scalar' ? readLeaf(first, first.slot.node, field) : undefined;
}

const readTable = (layers: readonly Layer[], field: TableField, find: FindPart): Table<unknown> =>
  new LaidTable(layers, field, find);

/** A table whose entries are read when they are looked at. */
class LaidTable implements Table<unknown> {
  readonly is = 'table';
  readonly at: Place;
  readonly through: Place | undefined;
  readonly text: string;
  note?: Note;
  private known: ReadonlyMap<string, unknown> | undefined;

  constructor(
    private readonly layers: readonly Layer[],
    private readonly field: TableField,
    private readonly find: FindPart,
  ) {
    const first = layers[0]!;
    this.at = placeOf(first);
    this.through = first.through;
    this.text = first.slot.key;
  }

  get entries(): ReadonlyMap<string, unknown> {
    this.note?.('entries');
    this.known ??= readEntries(this.layers, this.field, this.find);
    return this.known;
  }
}

function readEntries(layers: readonly Layer[], field: TableField, find: FindPart): ReadonlyMap<string, unknown> {
  const said = new Map<string, Layer[]>();
  for (const layer of layers)
    for (const kid of layer.slot.kids) {
      let under = said.get(kid.key);
      if (!under) {
        under = [];
        said.set(kid.key, under);
      }
      if (kid.node.is !== 'empty' && !isWrong(kid, layer.document)) under.push({ ...layer, slot: kid });
    }
  const entries = new Map<string, unknown>();
  for (const [key, under] of said) {
    const value = under[0] ? readValue(under, field.of, find) : undefined;
    if (value !== undefined) entries.set(key, value);
  }
  return entries;
}

function readList(layer: Layer, field: ListField, find: FindPart): Many<unknown> | undefined {
  const items = layer.slot.kids.flatMap((kid) => {
    if (kid.node.is === 'empty' || layer.document.wrong.has(kid.pointer)) return [];
    const value = readValue([{ ...layer, slot: kid }], field.of, find);
    return value === undefined ? [] : [value];
  });
  if (items.length === 0) return undefined;
  const text =
    layer.slot.node.is === 'scalar'
      ? splitOrigin(layer.slot.node.text).said
      : items.map((item) => (item as Fact<unknown>).text ?? '').join(', ');
  return { is: 'many', items, at: placeOf(layer), through: layer.through, text };
}

function readLeaf(layer: Layer, node: ScalarNode, field: LeafField): Fact<unknown> | undefined {
  const read = readText(node.text, field);
  if (!read) return undefined;
  return {
    is: 'fact',
    value: read.value,
    text: read.text,
    at: placeOf(layer),
    through: layer.through,
    origin: read.origin,
  };
}

function readText(text: string, field: LeafField): { value: unknown; text: string; origin: Origin } | undefined {
  if (field.is === 'text') return { value: text, text, origin: unsaid };
  const { said, origin } = splitOrigin(text);
  if (field.is === 'term') return { value: said, text: said, origin };
  const read: Read<unknown> =
    field.is === 'quantity' ? readQuantity(text, field.dimension) : readers[field.notation](text);
  return read.ok ? { value: read.value, text: said, origin: read.origin } : undefined;
}

export function placeOf(layer: Pick<Layer, 'slot' | 'file'>): Place {
  const { slot, file } = layer;
  // A map is shown at its key: underlining the whole of a part would hide what is wrong with it.
  const span =
    slot.node.is === 'scalar' || (slot.node.is === 'list' && slot.node.flow)
      ? slot.node.span
      : (slot.keySpan ?? slot.node.span);
  return { file, span, key: slot.keySpan, path: slot.path };
}
