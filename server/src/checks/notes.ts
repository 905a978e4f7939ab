/** Every free text of a build in which something private may stand. */
import type { Craft } from '../build/craft';
import type { Fact } from '../build/fact';

export function notesOf(craft: Craft): readonly Fact<string>[] {
  const parts = Object.values(craft.said.parts ?? {}) as { readonly note?: Fact<string> }[];
  return [craft.said, ...parts, ...craft.packs.map((pack) => pack.facts)].flatMap((map) =>
    map?.note?.is === 'fact' ? [map.note] : [],
  );
}
