/** Works out what belongs to one craft once, however many ask. Remembers for as long as the craft lives. */
import { beside } from '../build/beside';
import type { Craft } from '../build/craft';
import type { Pieces } from '../build/pieces';
import { lookedAgain, watched } from '../build/watched-craft';

/** With a value stands what of the craft it was worked out from, when that was watched. */
const memory = beside<Craft, Map<string, { readonly value: unknown; readonly pieces: Readonly<Pieces> | undefined }>>(
  'worked out',
);

/** @param name of what is worked out, no other thing's */
export function once<T>(craft: Craft, name: string, make: () => T): T {
  let all = memory.get(craft);
  if (!all) {
    all = new Map();
    memory.set(craft, all);
  }
  const known = all.get(name);
  if (known) {
    if (known.pieces) lookedAgain(craft, known.pieces);
    return known.value as T;
  }
  const made = watched(craft, make);
  all.set(name, made);
  return made.value;
}
