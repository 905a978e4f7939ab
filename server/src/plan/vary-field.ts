/** Finds a numeric field of a build by its path in the file's own words, and sets it in a copy of the craft. Changes no text and judges no value. */
import type { Craft, Pack, Role } from '../build/craft';
import type { Fact, Facts } from '../build/fact';
import { unsaid } from '../text/origin';
import { factorOf } from '../text/units';
import { fieldOf } from '../vocabulary';
import type { Field, NotationField, QuantityField } from '../vocabulary/field';
import { chosenPack } from './weight';

export interface NumberField {
  /** As it is spoken: `pack.capacity`, `motors.kv`, `flight.altitude`. */
  readonly path: string;
  /** Where it belongs; a role may hold a table of parts, of which `entry` names one. */
  readonly of: 'pack' | 'flight' | Role;
  readonly entry?: string;
  readonly key: string;
  readonly field: QuantityField | NotationField;
  /** The pack it is a field of, or that the figures are for. */
  readonly pack: Pack;
}

export type FieldFound =
  | { readonly ok: true; readonly field: NumberField }
  | { readonly ok: false; readonly why: string };

const no = (why: string): FieldFound => ({ ok: false, why });

/** @param words `battery.capacity`, `pack.capacity`, `packs.light.capacity`, `motors.kv`, `parts.motors.kv`, `extras.skid.weight` */
export function numberField(craft: Craft, words: string, pack = chosenPack(craft)): FieldFound {
  if (!pack) return no('The build has no pack, so it has no figures to compare. Add one under `packs:`.');
  const [first, ...rest] = words.split('.') as [string, ...string[]];
  if (first === 'parts') return numberField(craft, rest.join('.'), pack);
  if (first === 'packs') {
    const named = craft.packs.find((one) => one.name === rest[0]);
    return named ? numberField(craft, ['pack', ...rest.slice(1)].join('.'), named) : no(noPack(craft, rest[0]));
  }
  const build = fieldsOf(fieldOf.build);
  if (first === 'pack' || first === 'battery') {
    const table = build.packs;
    return leaf(words, 'pack', table?.is === 'table' ? table.of : undefined, rest, pack);
  }
  if (first === 'flight') return leaf(words, 'flight', build.flight, rest, pack);
  const roles = fieldsOf(build.parts);
  const role = Object.hasOwn(roles, first) ? roles[first] : undefined;
  if (!role)
    return no(
      `\`${first}\` is no part of a build. Say for example \`pack.capacity\`, \`motors.kv\` or \`flight.altitude\`.`,
    );
  if (role.is !== 'table') {
    if (!(craft.roles as Readonly<Record<string, unknown>>)[first]) return no(`The build has no \`${first}\`.`);
    return leaf(words, first as Role, role, rest, pack);
  }
  const [entry, ...key] = rest;
  const table = (craft.roles as Readonly<Record<string, { entries: ReadonlyMap<string, unknown> } | undefined>>)[first];
  if (entry === undefined || !table?.entries.has(entry))
    return no(`The build has nothing called \`${entry ?? ''}\` under \`${first}\`.`);
  return leaf(words, first as Role, role.of, key, pack, entry);
}

const noPack = (craft: Craft, name: string | undefined): string =>
  `The build has no pack \`${name ?? ''}\`. It has ${craft.packs.map((one) => one.name).join(', ')}.`;

const fieldsOf = (field: Field | undefined): Readonly<Record<string, Field>> =>
  field?.is === 'map' ? field.fields : {};

function leaf(
  words: string,
  of: NumberField['of'],
  field: Field | undefined,
  rest: readonly string[],
  pack: Pack,
  entry?: string,
): FieldFound {
  const [key, ...deeper] = rest;
  const fields = fieldsOf(field);
  const found = key !== undefined && Object.hasOwn(fields, key) ? fields[key] : undefined;
  const numbers = Object.keys(fields).filter((name) => isNumber(fields[name]));
  if (!found || deeper.length > 0)
    return no(`\`${words}\` is no field of a build. Numbers there: ${numbers.join(', ')}.`);
  if (!isNumber(found))
    return no(
      `\`${words}\` is no plain number. Numbers there: ${numbers.join(', ')}; parts are compared with --parts.`,
    );
  const spoken = of === 'pack' ? `pack.${key}` : [of, entry, key].filter(Boolean).join('.');
  return { ok: true, field: { path: spoken, of, entry, key: key!, field: found, pack } };
}

const isNumber = (field: Field | undefined): field is QuantityField | NotationField =>
  field?.is === 'quantity' || (field?.is === 'notation' && (field.notation === 'number' || field.notation === 'count'));

/** The unit that a value is written in, empty where it is bare, and the engine's unit for one of it; a bare motor constant is in Kv. */
export function unitSaid({ field }: NumberField, text: string): { readonly unit: string; readonly factor: number } {
  const unit = /^[+-]?[\d.]+\s*(\S.*)?$/.exec(text)?.[1] ?? '';
  return { unit, factor: (field.is === 'quantity' && factorOf(field.dimension, unit || 'Kv')) || 1 };
}

export interface Setting {
  readonly craft: Craft;
  readonly pack: Pack;
}

/** What the file says now. */
export function factAt(
  { craft, pack }: Setting,
  at: Pick<NumberField, 'of' | 'entry' | 'key'>,
): Fact<number> | undefined {
  return (holderOf({ craft, pack }, at) as Readonly<Record<string, Fact<number> | undefined>> | undefined)?.[at.key];
}

function holderOf({ craft, pack }: Setting, { of, entry }: Pick<NumberField, 'of' | 'entry'>): Facts | undefined {
  if (of === 'pack') return pack.facts;
  if (of === 'flight') return craft.said.flight;
  const part = (craft.roles as Readonly<Record<string, Facts | undefined>>)[of];
  return entry === undefined
    ? part
    : (part as unknown as { entries: ReadonlyMap<string, Facts> } | undefined)?.entries.get(entry);
}

/** A copy in which one field has another value. What was said about the old value's origin stays, so that ranges compare. */
export function withValue<T>(
  setting: Setting,
  at: Pick<NumberField, 'of' | 'entry' | 'key'>,
  value: T,
  text: string,
): Setting {
  const before = factAt(setting, at);
  const { at: place, through, origin } = before ?? { at: setting.craft.where, through: undefined, origin: unsaid };
  const fact: Fact<T> = { is: 'fact', value, text, at: place, through, origin };
  return withFields(setting, at, { [at.key]: fact });
}

/** A copy in which some fields of one part hold other facts; `undefined` takes one away. */
export function withFields(
  { craft, pack }: Setting,
  at: Pick<NumberField, 'of' | 'entry'>,
  fields: Readonly<Record<string, unknown>>,
): Setting {
  const holder = { ...holderOf({ craft, pack }, at), ...fields };
  return withHolder({ craft, pack }, at, holder);
}

/** A copy in which a part, a pack or the way of flying is another one. */
export function withHolder(
  { craft, pack }: Setting,
  { of, entry }: Pick<NumberField, 'of' | 'entry'>,
  holder: Facts,
): Setting {
  if (of === 'pack') {
    const other = { ...pack, facts: holder as Pack['facts'] };
    return { craft: { ...craft, packs: craft.packs.map((one) => (one === pack ? other : one)) }, pack: other };
  }
  if (of === 'flight')
    return { craft: { ...craft, said: { ...craft.said, flight: holder as Craft['said']['flight'] } }, pack };
  const whole =
    entry === undefined ? holder : withEntry((craft.roles as Readonly<Record<string, unknown>>)[of], entry, holder);
  const parts = craft.said.parts as Readonly<Record<string, unknown>> | undefined;
  // A role filled by a stack has no part of its own; its weight is the stack's.
  const said = parts?.[of] === undefined ? craft.said : { ...craft.said, parts: { ...parts, [of]: whole } };
  return { craft: { ...craft, roles: { ...craft.roles, [of]: whole }, said } as Craft, pack };
}

function withEntry(table: unknown, entry: string, holder: Facts): unknown {
  const known = table as { readonly entries: ReadonlyMap<string, unknown> };
  return {
    ...known,
    entries: new Map([...known.entries].map(([name, facts]) => [name, name === entry ? holder : facts])),
  };
}
