/**
 * What if: the same craft with one field or one part changed, made ready for the physics. Changes no text, computes no figure and
 * words nothing but what no longer holds.
 */
import type { Craft, Pack, Role } from '../build/craft';
import type { Fact, Facts } from '../build/fact';
import type { CraftInput, Range } from '../physics';
import { flightInput } from './flight-input';
import { factAt, type NumberField, type Setting, withFields, withHolder, withValue } from './vary-field';
import { chosenPack, type Weight, weightOf } from './weight';

/** One change to try. */
export interface Change {
  readonly label: string;
  /** In the engine's unit of the field; absent for a part. */
  readonly value?: number;
  readonly apply: (setting: Setting) => Setting;
  /** Whether a logged flight of the craft as it is still tells something. */
  readonly keepsLog: boolean;
}

export interface Variation {
  readonly label: string;
  readonly value: number | undefined;
  readonly craft: Craft;
  readonly pack: Pack;
  readonly weight: Weight;
  /** Undefined when facts are missing. */
  readonly input: CraftInput | undefined;
}

export interface Varied {
  /** The craft as the file has it. */
  readonly base: Variation;
  readonly rows: readonly Variation[];
  /** The logged flight was left out of all rows, since it was flown with other parts. */
  readonly logLeftOut: boolean;
}

/** @param holdWeight the craft is as heavy as it is now, whatever is changed */
export function vary(setting: Setting, changes: readonly Change[], holdWeight = false): Varied {
  const logLeftOut = setting.craft.said.flight?.logged !== undefined && changes.some((change) => !change.keepsLog);
  const weight = weightOf(setting.craft, setting.pack);
  const variation = (label: string, value: number | undefined, changed: Setting): Variation => {
    const now = weightAfter(setting, weight, changed);
    const held = holdWeight ? { ...now, ready: weight.ready } : now;
    const made = flightInput(changed.craft, changed.pack);
    const input = made.ok ? asFlownBefore({ ...made.input, mass: held.ready }, weight.ready, logLeftOut) : undefined;
    return { label, value, ...changed, weight: held, input };
  };
  return {
    base: variation('as it is', undefined, setting),
    rows: changes.map((change) => variation(change.label, change.value, change.apply(setting))),
    logLeftOut,
  };
}

/** A logged flight keeps the weight it was flown at. */
function asFlownBefore(input: CraftInput, then: Range, without: boolean): CraftInput {
  if (!input.log) return input;
  return { ...input, log: without ? undefined : { ...input.log, mass: then.value } };
}

/** A craft that stood on a scale weighs as much more or less as its parts do. */
function weightAfter(before: Setting, weight: Weight, after: Setting): Weight {
  const now = weightOf(after.craft, after.pack);
  if (!weight.weighed || before.craft.said.flight?.weighed?.value !== after.craft.said.flight?.weighed?.value)
    return now;
  const rows = (one: Weight): number => one.rows.reduce((sum, row) => sum + row.mass.value, 0);
  const onScale = chosenPack(before.craft)?.name === before.pack.name;
  const byPack = onScale ? (now.packRow?.mass.value ?? 0) - (weight.packRow?.mass.value ?? 0) : 0;
  const byParts = rows(now) - rows(weight);
  const moved = ({ value, low, high }: Range, by: number): Range => ({
    value: value + by,
    low: low + by,
    high: high + by,
  });
  return { ...now, ready: moved(now.ready, byParts + byPack), dry: moved(now.dry, byParts + byPack) };
}

/** A field of the build at several values. What follows from the field by its nature follows. */
export const valueChanges = (
  field: NumberField,
  values: readonly { readonly value: number; readonly label: string }[],
): Change[] =>
  values.map(({ value, label }) => ({
    label,
    value,
    keepsLog: field.of === 'pack' || field.key === 'weight' || field.path === 'flight.weighed',
    apply: (setting) => {
      const before = factAt(setting, field)?.value;
      const changed = withValue(setting, field, value, label);
      return before !== undefined && before > 0 ? followed(setting, changed, field, value / before) : changed;
    },
  }));

/**
 * A pack's mass and printed energy follow its capacity at its own energy for a weight, and its cells' resistance falls as they grow. A
 * motor wound for another Kv has other turns of other wire in the same space: resistance goes as 1/Kv², no-load current as Kv;
 * rows of a thrust stand were another motor's.
 */
function followed(before: Setting, after: Setting, { of, key }: NumberField, ratio: number): Setting {
  if (of === 'pack' && key === 'capacity') {
    const { weight, energy, 'cell-resistance': resistance } = before.pack.facts;
    return withFields(
      after,
      { of },
      { weight: times(weight, ratio), energy: times(energy, ratio), 'cell-resistance': times(resistance, 1 / ratio) },
    );
  }
  if (of === 'motors' && key === 'kv') {
    const { resistance, 'no-load-current': noLoad } = before.craft.roles.motors ?? {};
    return withFields(
      after,
      { of },
      {
        resistance: times(resistance, ratio ** -2),
        'no-load-current': times(noLoad, ratio),
        'thrust-table': undefined,
      },
    );
  }
  return after;
}

const times = (fact: Fact<number> | undefined, by: number): Fact<number> | undefined =>
  fact && { ...fact, value: fact.value * by };

/** Other parts in one role, or other packs. They keep the count that the build says. */
export const partChanges = (
  of: Role | 'pack',
  parts: readonly { readonly id: string; readonly facts: Facts }[],
): Change[] =>
  parts.map(({ id, facts }) => ({
    label: id,
    keepsLog: of !== 'motors' && of !== 'propellers' && of !== 'esc' && of !== 'stack' && of !== 'all-in-one',
    apply: (setting) => {
      const own =
        of === 'pack'
          ? undefined
          : (setting.craft.roles as Readonly<Record<string, { count?: unknown } | undefined>>)[of];
      const changed = withHolder(setting, { of }, own?.count ? ({ ...facts, count: own.count } as Facts) : facts);
      return of === 'stack' || of === 'all-in-one' ? withBoards(changed, facts) : changed;
    },
  }));

/** The boards inside a stack fill their roles, unless a part of its own does. */
function withBoards({ craft, pack }: Setting, facts: Facts): Setting {
  const said = craft.said.parts as Readonly<Record<string, unknown>> | undefined;
  const inside = ['flight-controller', 'esc', 'receiver', 'video-transmitter'].flatMap((role) => {
    const board = (facts as Readonly<Record<string, unknown>>)[role];
    return board && !said?.[role] ? [[role, board] as const] : [];
  });
  return { craft: { ...craft, roles: { ...craft.roles, ...Object.fromEntries(inside) } } as Craft, pack };
}
