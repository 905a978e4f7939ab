/** Walks a build beside its field table and finds values outside the range their field names. Words nothing. */
import type { Craft } from '../build/craft';
import type { Fact } from '../build/fact';
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
  if (typeof value !== 'object' || value === null || !field) return;
  if (field.is === 'quantity') {
    const one = judge(value as Fact<number>, field);
    if (one) found.push(one);
  } else if (field.is === 'map') {
    for (const [key, kid] of Object.entries(value))
      if (Object.hasOwn(field.fields, key)) walk(kid, field.fields[key], found);
  } else if (field.is === 'table') {
    for (const kid of (value as { entries?: ReadonlyMap<string, unknown> }).entries?.values() ?? [])
      walk(kid, field.of, found);
  } else if (field.is === 'list') {
    for (const kid of (value as { items?: readonly unknown[] }).items ?? []) walk(kid, field.of, found);
  }
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
