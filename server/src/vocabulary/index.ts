/** The kinds of file, each with its field table and its validator. The only door to what is made from schemas/. */
import type { MapField } from './field';
import { benchField, buildField, partsField, settingsField, shopsField } from './generated/fields';
import { bench, build, parts, settings, shops } from './generated/validators.js';

export const fileKinds = ['build', 'parts', 'bench', 'shops', 'settings'] as const;
export type FileKind = (typeof fileKinds)[number];

export const isFileKind = (word: string | undefined): word is FileKind => fileKinds.includes(word as FileKind);

export const fieldOf: Readonly<Record<FileKind, MapField>> = {
  build: buildField,
  parts: partsField,
  bench: benchField,
  shops: shopsField,
  settings: settingsField,
};

export const fileKindWords: Readonly<Record<FileKind, string>> = {
  build: 'A craft: its parts, how they are wired and how it is flown',
  parts: 'Parts that several builds share',
  bench: "A person's own bench: radio, goggles, charger, tools, parts owned",
  shops: 'Shops with prices, stock and shipping',
  settings: "The workspace's own choices",
};

/** One thing a schema holds against a file: where, as a JSON pointer, and what kind of thing. Worded elsewhere. */
export interface Breach {
  readonly path: string;
  readonly keyword: string;
  readonly params: Readonly<Record<string, unknown>>;
}

const validators = { build, parts, bench, shops, settings };

export function validate(kind: FileKind, data: unknown): readonly Breach[] {
  const validator = validators[kind];
  if (validator(data)) return [];
  return (validator.errors ?? []).map((error) => ({
    path: error.instancePath,
    keyword: error.keyword,
    params: error.params as Record<string, unknown>,
  }));
}
