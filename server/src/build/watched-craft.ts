/** Watches which pieces of a craft are looked at, so that after an edit elsewhere nobody need look again. Changes nothing of what is seen. */
import { beside } from './beside';
import type { Craft } from './craft';
import { addPiece, addPieces, everyKey, type Pieces, packHead, piecesOf } from './pieces';
import { noteLooks } from './read-facts';

interface Watch {
  looked: Pieces | undefined;
}

const watches = beside<Craft, Watch>('watch');

/** To be called before anybody looks at the craft. */
export function watchCraft(craft: Craft): void {
  const watch: Watch = { looked: undefined };
  watches.set(craft, watch);
  const noteOn = (facts: object, head: string): void => {
    const of = piecesOf(head);
    noteLooks(facts, (key) => {
      if (watch.looked) addPiece(watch.looked, of, key);
    });
  };
  // What a build has, parts and packs, is not noted: with another set of them everything is looked at again.
  noteOn(craft.said, 'said');
  for (const [at, pack] of craft.packs.entries()) noteOn(pack.facts, packHead(at));
  const own = (craft.said.parts ?? {}) as Readonly<Record<string, object | undefined>>;
  for (const [role, facts] of Object.entries(craft.roles)) {
    if (typeof facts !== 'object') continue;
    if (own[role]) noteOn(facts, role);
    // A board inside another part is looked at as one thing, and shares what that part says of both.
    else
      noteLooks(facts, () => {
        if (!watch.looked) return;
        addPiece(watch.looked, piecesOf('stack'), role);
        addPiece(watch.looked, piecesOf('all-in-one'), everyKey);
      });
  }
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
export function lookedAgain(craft: Craft, pieces: Readonly<Pieces>): void {
  const looked = watches.get(craft)?.looked;
  if (looked) addPieces(looked, pieces);
}
