/** A craft that notes which of its pieces are looked at, so that an edit elsewhere need not ask again. Changes nothing of what is seen. */
import type { Craft, Pack } from './craft';
import { addPiece, addPieces, everyKey, type Pieces, packHead, piecesOf } from './pieces';

interface Watch {
  /** The craft as it was resolved. */
  readonly of: Craft;
  looked: Pieces | undefined;
}

const watches = new WeakMap<Craft, Watch>();

/** The same craft under watch: `watched` tells what was looked at in it. */
export function watchedCraft(craft: Craft): Craft {
  const watch: Watch = { of: craft, looked: undefined };
  const noteOf = (head: string): Note => {
    const of = piecesOf(head);
    return (key) => {
      if (watch.looked) addPiece(watch.looked, of, key);
    };
  };
  const own = craft.said.parts as Readonly<Record<string, object | undefined>> | undefined;
  const parts: Record<string, unknown> = {};
  for (const [name, facts] of Object.entries(own ?? {}))
    parts[name] = isFacts(facts) ? underWatch(facts, noteOf(name)) : facts;
  const roles: Record<string, unknown> = {};
  for (const [role, facts] of Object.entries(craft.roles))
    roles[role] =
      own?.[role] !== undefined || !isFacts(facts)
        ? parts[role]
        : // A board inside another part is looked at as one thing.
          underWatch(facts, () => {
            noteOf('stack')(role);
            noteOf('all-in-one')(everyKey);
          });
  const packs = craft.packs.map(
    ({ name, facts }, at): Pack => ({ name, facts: underWatch(facts, noteOf(packHead(at))) }),
  );
  const note = noteOf('said');
  const said = new Proxy(craft.said, {
    get(target, key) {
      if (key === 'parts') return own && parts;
      if (key === 'packs') for (const at of packs.keys()) noteOf(packHead(at))(everyKey);
      else if (typeof key === 'string') note(key);
      return Reflect.get(target, key);
    },
  });
  const made = { ...craft, said, roles, packs } as Craft;
  watches.set(made, watch);
  return made;
}

/** Runs something and tells which pieces of a craft under watch it looked at. Of a craft that is not, it tells nothing. */
export function watched<T>(
  craft: Craft,
  look: () => T,
): { readonly value: T; readonly pieces: Readonly<Pieces> | undefined } {
  const watch = watches.get(craft);
  if (!watch) return { value: look(), pieces: undefined };
  const outer = watch.looked;
  const inner: Pieces = [];
  watch.looked = inner;
  try {
    return { value: look(), pieces: inner };
  } finally {
    watch.looked = outer;
    if (outer) addPieces(outer, inner);
  }
}

/** Counts pieces as looked at: the answer of an earlier look is used again. */
export function lookedAgain(craft: Craft, pieces: Readonly<Pieces> | undefined): void {
  const looked = pieces && watches.get(craft)?.looked;
  if (looked) addPieces(looked, pieces);
}

/** The craft itself, whether it is looked at under watch or not: what is remembered of it is remembered once. */
export const craftItself = (craft: Craft): Craft => watches.get(craft)?.of ?? craft;

type Note = (key: string) => void;

function underWatch<T extends object>(facts: T, note: Note): T {
  return new Proxy(facts, {
    get(target, key) {
      if (typeof key === 'string') note(key);
      return Reflect.get(target, key);
    },
    has(target, key) {
      if (typeof key === 'string') note(key);
      return Reflect.has(target, key);
    },
    ownKeys(target) {
      note(everyKey);
      return Reflect.ownKeys(target);
    },
  });
}

const isFacts = (value: unknown): value is object => typeof value === 'object' && value !== null;
