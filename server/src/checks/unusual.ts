/** Walks a build beside its field table and finds values outside the range their field names. Words nothing. */
import type { Craft } from '../build/craft';
import type { Fact, Pointable } from '../build/fact';
import { type Read, readQuantity } from '../text/quantity';
import { fieldOf } from '../vocabulary';
import type { Field } from '../vocabulary/field';
import { exceeds, fallsShort } from './beyond';

export interface Unusual {
  readonly fact: Fact<number>;
  readonly least: string;
  readonly most: string;
  /** By more than a factor of two. */
  readonly far: boolean;
}

export function unusualValues(craft: Craft): readonly Unusual[] {
  const found: Unusual[] = [];
  walk(craft.said, fieldOf.build, found);
  return found;
}

function walk(value: unknown, field: Field | undefined, found: Unusual[]): void {
  if (typeof value !== 'object' || value === null || !field || usual.has(value)) return;
  const before = found.length;
  if (field.is === 'quantity') {
    const one = judge(value as Fact<number>, field);
    if (one) found.push(one);
  } else if (field.is === 'map') {
    for (const [key, of] of rangedIn(field)) walk((value as Readonly<Record<string, unknown>>)[key], of, found);
  } else if (field.is === 'table') {
    for (const kid of (value as { entries?: ReadonlyMap<string, unknown> }).entries?.values() ?? [])
      walk(kid, field.of, found);
  } else if (field.is === 'list') {
    for (const kid of (value as { items?: readonly unknown[] }).items ?? []) walk(kid, field.of, found);
  }
  // The build's own values are other objects after each edit, and would only fill the memory.
  if (found.length === before && (value as Partial<Pointable>).through) usual.add(value);
}

/** Library values that were found in order: the same objects at every keystroke. */
const usual = new WeakSet<object>();

/** The keys of a map under which some value has a usual range; worked out once a field. */
const ranged = new WeakMap<Field, readonly (readonly [string, Field])[]>();

function rangedIn(field: Field & { readonly is: 'map' }): readonly (readonly [string, Field])[] {
  const known = ranged.get(field);
  if (known) return known;
  // A field inside itself has no range of its own on the way down.
  ranged.set(field, []);
  const found = Object.entries(field.fields).filter(([, kid]) => hasRange(kid));
  ranged.set(field, found);
  return found;
}

function hasRange(field: Field): boolean {
  if (field.is === 'quantity') return field.about.usual !== undefined;
  if (field.is === 'map') return rangedIn(field).length > 0;
  return (field.is === 'table' || field.is === 'list') && hasRange(field.of);
}

/** Read once a field: the table of fields never changes. */
const ranges = new WeakMap<Field, readonly [Read<number>, Read<number>]>();

function rangeOf(
  field: Field & { readonly is: 'quantity' },
  least: string,
  most: string,
): readonly [Read<number>, Read<number>] {
  const known = ranges.get(field);
  if (known) return known;
  const range = [readQuantity(least, field.dimension), readQuantity(most, field.dimension)] as const;
  ranges.set(field, range);
  return range;
}

function judge(fact: Fact<number>, field: Field & { readonly is: 'quantity' }): Unusual | undefined {
  const [least, most] = field.about.usual ?? [];
  if (least === undefined || most === undefined || typeof fact.value !== 'number') return undefined;
  const [low, high] = rangeOf(field, least, most);
  if (!low.ok || !high.ok || (!fallsShort(fact.value, low.value) && !exceeds(fact.value, high.value))) return undefined;
  const far = exceeds(fact.value, high.value)
    ? high.value > 0 && exceeds(fact.value, 2 * high.value)
    : low.value > 0 && fallsShort(fact.value, low.value / 2);
  return { fact, least, most, far };
}
