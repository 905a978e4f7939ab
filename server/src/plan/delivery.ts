/** What came against what the file says: one value measured, its difference, and the edit that writes it back with its origin. Changes nothing by itself. */
import type { Craft } from '../build/craft';
import { type Fact, lookUp } from '../build/fact';
import type { Edit } from '../build/finding';
import { fieldsAt } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import { readers } from '../text/notation';
import { splitOrigin } from '../text/origin';
import { readQuantity } from '../text/quantity';
import { holderOf, roadOf, valueEdit } from './value-edit';

export interface Arrived {
  /** As named: `motors.weight`, `packs.main.weight`, `flight.weighed`. */
  readonly path: string;
  readonly came: string;
  /** As the file has it, and whose word that is. */
  readonly expected: string | undefined;
  readonly trust: string | undefined;
  /** Share by which it differs, for a number. */
  readonly off: number | undefined;
  readonly edit: Edit;
}

export type Arrival = { readonly ok: true; readonly arrived: Arrived } | { readonly ok: false; readonly why: string };

const no = (why: string): Arrival => ({ ok: false, why });

/** @param words `motors.weight`; @param value as on the scale, `32.4 g`; @param date YYYY-MM-DD */
export function arrival(file: SourceFile, craft: Craft, words: string, value: string, date: string): Arrival {
  const road = roadOf(words);
  const key = road.at(-1)!;
  const holder = holderOf(file, craft, road);
  if (!holder) return no(`The build has no \`${road.slice(0, -1).join('.')}\`.`);
  const field = fieldsAt(holder.field, holder.node)?.fields[key];
  if (!field) return no(`\`${road.slice(0, -1).join('.')}\` has no field \`${key}\`.`);
  if (field.is !== 'quantity' && field.is !== 'notation' && field.is !== 'term')
    return no(`\`${words}\` is no single value.`);
  const read =
    field.is === 'quantity'
      ? readQuantity(value, field.dimension, field.about.examples?.[0])
      : field.is === 'notation'
        ? readers[field.notation](value)
        : undefined;
  if (read && !read.ok) return no(`${words}: ${read.why}.`);
  if (field.is === 'term' && !field.terms.some(({ term }) => term === value))
    return no(`${words}: \`${value}\` is none of ${field.terms.map(({ term }) => term).join(', ')}.`);
  const known = lookUp(craft.said, road) as Fact<unknown> | undefined;
  const { said, origin } = splitOrigin(value);
  const measured = field.is === 'quantity' && origin.trust === 'unsaid';
  const text = measured ? `${said} (${field.dimension === 'mass' ? 'weighed' : 'measured'} ${date})` : value;
  const number = read?.ok && typeof read.value === 'number' ? read.value : undefined;
  return {
    ok: true,
    arrived: {
      path: road.join('.'),
      came: text,
      expected: known?.text,
      trust: known?.origin.word,
      off:
        number !== undefined && typeof known?.value === 'number' && known.value !== 0
          ? number / known.value - 1
          : undefined,
      edit: valueEdit(file, holder, key, text),
    },
  };
}
