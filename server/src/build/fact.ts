/** A fact: one value that was said, with where and how well it is known. Facts are read-only and may always be missing. */
import type { Origin } from '../text/origin';
import type { Place } from './place';

export interface Fact<T> {
  readonly is: 'fact';
  readonly value: T;
  /** As the builder wrote it, without its origin. */
  readonly text: string;
  readonly at: Place;
  /** The `use:` in the build through which a library's value came; a finding is shown there. */
  readonly through?: Place;
  readonly origin: Origin;
}

/** What a map of facts knows of itself. */
export interface Facts {
  readonly where?: Place;
  /** The `use:` of the part, when it was taken from a library. */
  readonly used?: Place;
}

export interface Many<T> {
  readonly is: 'many';
  readonly items: readonly T[];
  readonly at: Place;
  readonly through?: Place;
  readonly text: string;
}

export interface Table<T> {
  readonly is: 'table';
  readonly entries: ReadonlyMap<string, T>;
  readonly at: Place;
  readonly through?: Place;
  readonly text: string;
}

/** What a check may point a finding at. */
export type Pointable = { readonly at: Place; readonly through?: Place; readonly text: string };

/** Where a finding about this is shown in the build: at the `use:` for a library's value, else at the value. */
export const shownAt = (fact: Pointable): Place => fact.through ?? fact.at;

/** What stands at the end of a path of keys, through tables and maps of facts. */
export function lookUp(from: unknown, keys: readonly string[]): unknown {
  let here = from;
  for (const key of keys) {
    if (typeof here !== 'object' || here === null) return undefined;
    const table = here as Partial<Table<unknown>>;
    here = table.is === 'table' ? table.entries?.get(key) : (here as Readonly<Record<string, unknown>>)[key];
  }
  return here;
}
