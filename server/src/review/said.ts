/** What is said about a build or a part, flattened to paths: as written, with units and origins, library values laid underneath. Compares nothing. */
import type { Place } from '../build/place';
import { type FindPart, type Layer, placeOf } from '../build/read-facts';
import { fieldsAt, kidOf, type Slot } from '../build/slot';
import { isWrong } from '../build/source-file';

export interface Said {
  /** As written; several values of a list with commas between. */
  readonly text: string;
  readonly at: Place;
  /** The `use:` of the build through which a library's value came. */
  readonly through?: Place;
  /** The part, pack or other thing it belongs to, as in `parts.motors`; empty for what is said of the whole. */
  readonly head: string;
  /** Entries of a list of maps, each as one line. */
  readonly rows?: readonly string[];
  /** What else decides the value although it isn't shown. */
  readonly hidden?: string;
}

export type SaidMap = ReadonlyMap<string, Said>;

export const nowhere: FindPart = () => undefined;

export function saidOf(layer: Layer, find: FindPart): SaidMap {
  const out = new Map<string, Said>();
  sayMap([layer], find, '', '', out);
  return out;
}

/**
 * Only of the parts and packs of a build that use one of the ids: what the others say is known to be the same.
 * @param keys fields that may differ in what the ids name, when that is known
 */
export function saidOfUsers(
  layer: Layer,
  find: FindPart,
  ids: ReadonlySet<string>,
  keys: ReadonlySet<string> | undefined,
): SaidMap {
  const out = new Map<string, Said>();
  for (const section of ['parts', 'packs'])
    for (const slot of kidOf(layer.slot, section)?.kids ?? []) {
      const used = usedIds(slot);
      if (!used.some((id) => ids.has(id))) continue;
      const path = `${section}.${slot.key}`;
      const head = headOf(section, slot.key, '');
      // Keys are those of the part itself, not of one inside it.
      const narrow = keys && used.length === 1 && kidOf(slot, 'use') ? keys : undefined;
      if (narrow && slot.node.is === 'map') sayMap([{ ...layer, slot }], find, path, head, out, narrow);
      else sayValue([{ ...layer, slot }], find, path, head, out);
    }
  return out;
}

export const sameSaid = (a: Said | undefined, b: Said | undefined): boolean =>
  a?.text === b?.text &&
  a?.hidden === b?.hidden &&
  (a?.rows === undefined || b?.rows === undefined || sameRows(a.rows, b.rows));

const sameRows = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && [...a].sort().join('\n') === [...b].sort().join('\n');

function sayMap(
  layers: readonly Layer[],
  find: FindPart,
  path: string,
  head: string,
  out: Map<string, Said>,
  only?: ReadonlySet<string>,
): void {
  const all = followUses(layers, find);
  const keys = new Set(all.flatMap((layer) => layer.slot.kids.map((kid) => kid.key)));
  for (const key of keys) {
    if (only && !only.has(key)) continue;
    const kids = all.flatMap((layer) => {
      const kid = kidOf(layer.slot, key);
      return kid && kid.node.is !== 'empty' ? [{ ...layer, slot: kid }] : [];
    });
    if (kids.length > 0) sayValue(kids, find, path === '' ? key : `${path}.${key}`, headOf(path, key, head), out);
  }
}

/** Parts and packs are spoken of one by one, those of a table too. */
function headOf(path: string, key: string, head: string): string {
  if (path === 'packs' || path === 'shops') return `${path}.${key}`;
  if (path === 'parts') return isTable(key) ? '' : `${path}.${key}`;
  if (path.startsWith('parts.') && isTable(path.slice(6)) && head === '') return `${path}.${key}`;
  return head;
}

const isTable = (role: string): boolean => role === 'adapters' || role === 'fasteners' || role === 'extras';

function sayValue(kids: readonly Layer[], find: FindPart, path: string, head: string, out: Map<string, Said>): void {
  const first = kids[0]!;
  const { node } = first.slot;
  const base = { at: placeOf(first), through: first.through, head };
  if (node.is === 'map') {
    // A map that says nothing is still there, or not.
    if (first.slot.kids.length === 0) out.set(path, { ...base, text: '' });
    sayMap(
      kids.filter((kid) => kid.slot.node.is === 'map'),
      find,
      path,
      head,
      out,
    );
  } else if (node.is === 'scalar') out.set(path, { ...base, text: oneLine(node.text), hidden: hiddenOf(kids, find) });
  else if (node.is === 'list') {
    const rows = first.slot.kids.map((kid) => rowOf(kid));
    const flat = first.slot.kids.every((kid) => kid.node.is !== 'map');
    out.set(path, { ...base, text: rows.join(', '), rows: flat ? undefined : rows });
  }
}

/** A value that is wrong lets the library's shine through; a `use:` leads somewhere or nowhere. */
function hiddenOf(kids: readonly Layer[], find: FindPart): string | undefined {
  const { slot, document, through } = kids[0]!;
  const below = kids.length > 1 && isWrong(slot, document) ? kids[1]!.slot.node : undefined;
  if (below?.is === 'scalar') return below.text;
  if (!through && isUse(slot)) return kindOf(find(slot.node.is === 'scalar' ? slot.node.text : undefined));
  return undefined;
}

function rowOf(slot: Slot): string {
  if (slot.node.is === 'scalar') return oneLine(slot.node.text);
  return slot.kids.map((kid) => (/^\d+$/.test(kid.key) ? rowOf(kid) : `${kid.key} ${rowOf(kid)}`)).join(', ');
}

export const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

const isUse = (slot: Slot): boolean =>
  slot.key === 'use' && slot.field?.is === 'text' && slot.field.reference === 'part';

export const kindOf = (layer: Layer | undefined): string => {
  const node = kidOf(layer?.slot, 'kind')?.node;
  return !layer ? 'nothing' : node?.is === 'scalar' ? node.text : '';
};

/** The same rule by which facts are read: a part of another kind is not followed. */
function followUses(layers: readonly Layer[], find: FindPart): readonly Layer[] {
  const all: Layer[] = [];
  for (const layer of layers) {
    all.push(layer);
    const seen = new Set<Slot>();
    let at = layer;
    for (;;) {
      const use = kidOf(at.slot, 'use');
      const named = use && isUse(use) && use.node.is === 'scalar' ? use.node.text : undefined;
      const found = find(named);
      if (
        !found ||
        seen.has(found.slot) ||
        fieldsAt(found.slot.field, found.slot.node)?.fields !== fieldsAt(layer.slot.field, layer.slot.node)?.fields
      )
        break;
      seen.add(found.slot);
      at = { ...found, through: layer.through ?? placeOf({ ...layer, slot: use ?? layer.slot }) };
      all.push(at);
    }
  }
  return all;
}

/** Every id that a slot's `use:` keys name. */
export function usedIds(slot: Slot): readonly string[] {
  const own = isUse(slot) && slot.node.is === 'scalar' ? [slot.node.text] : [];
  return [...own, ...slot.kids.flatMap(usedIds)];
}

/** Ids under which shops sell what a build uses: its parts, and what they say they are sold as. */
export function boughtIds(slot: Slot, find: FindPart): ReadonlySet<string> {
  const ids = new Set<string>();
  const look = (one: Slot): void => {
    if (one.key === 'sold-as' && one.node.is === 'scalar') ids.add(one.node.text);
    for (const kid of one.kids) look(kid);
  };
  look(slot);
  for (const id of usedIds(slot)) {
    if (ids.has(id)) continue;
    ids.add(id);
    const part = find(id)?.slot;
    if (part)
      for (const other of boughtIds(part, (next) => (ids.has(next ?? '') ? undefined : find(next)))) ids.add(other);
  }
  return ids;
}
