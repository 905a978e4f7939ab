/** The pieces of a build that can be looked at one by one, and those in which two readings of it differ. Where things stand in the text counts as no difference. */
import { roleKinds } from '../vocabulary/generated/fields';
import { kidOf, type Slot } from './slot';
import { type FileDocument, isWrong } from './source-file';

/** Some of the pieces, one bit each by their numbers. */
export type Pieces = number[];

/** Numbers by what a piece belongs to (a role, `pack 0`, or `said` for what the build says itself) and by its key there. They are the same for every build, and no more than the keys that are ever asked for. */
const numbers = new Map<string, Map<string, number>>();
let numbered = 0;

export function piecesOf(head: string): Map<string, number> {
  const known = numbers.get(head);
  if (known) return known;
  const made = new Map<string, number>();
  numbers.set(head, made);
  return made;
}

/** Stands for the list of keys that a head has. */
export const everyKey = '*';

/** @param of the pieces of its head */
export function addPiece(pieces: Pieces, of: Map<string, number>, key: string): void {
  let number = of.get(key);
  if (number === undefined) {
    number = numbered++;
    of.set(key, number);
  }
  const word = number >> 5;
  while (pieces.length <= word) pieces.push(0);
  pieces[word]! |= 1 << (number & 31);
}

export function addPieces(pieces: Pieces, more: Readonly<Pieces>): void {
  while (pieces.length < more.length) pieces.push(0);
  for (let i = 0; i < more.length; i++) pieces[i]! |= more[i]!;
}

export function haveCommon(some: Readonly<Pieces>, others: Readonly<Pieces>): boolean {
  const shorter = Math.min(some.length, others.length);
  for (let i = 0; i < shorter; i++) if ((some[i]! & others[i]!) !== 0) return true;
  return false;
}

/** A key that differs is also a difference to whoever looks at all keys. What has no number was never looked at by anybody. */
function addChanged(changed: Pieces, head: string, keys: ReadonlySet<string> | 'all'): void {
  const of = numbers.get(head);
  if (!of || (keys !== 'all' && keys.size === 0)) return;
  for (const key of of.keys()) if (keys === 'all' || key === everyKey || keys.has(key)) addPiece(changed, of, key);
}

/** What differs, or nothing at all when the two are not built alike: another set of parts, packs or keys. */
export function changedPieces(before: FileDocument, after: FileDocument): Readonly<Pieces> | undefined {
  if (!before.slot || !after.slot || !sameForm(before.slot, after.slot, before, after)) return undefined;
  const changed: Pieces = [];
  for (const [i, was] of before.slot.kids.entries()) {
    const is = after.slot.kids[i]!;
    if (was.key === 'parts' || was.key === 'packs') {
      if (!sameForm(was, is, before, after)) return undefined;
      for (const [at, part] of was.kids.entries()) {
        const keys = changedKeys(part, is.kids[at]!, before, after);
        if (holdsRoles(part.key, keys)) return undefined;
        addChanged(changed, was.key === 'packs' ? packHead(at) : part.key, keys);
      }
    } else if (!sameSlot(was, is, before, after)) addChanged(changed, 'said', new Set([was.key]));
  }
  return changed;
}

/** With these, other roles of the craft may come or go. */
const holdsRoles = (part: string, changed: ReadonlySet<string> | 'all'): boolean =>
  (part === 'stack' || part === 'all-in-one') &&
  (changed === 'all' || [...changed].some((key) => Object.hasOwn(roleKinds, key)));

/** Packs are told apart by their places: with other packs, everything is looked at again. */
export const packHead = (at: number): string => `pack ${at}`;

/** The keys of one part that differ; all of them when what it is has changed. */
function changedKeys(was: Slot, is: Slot, before: FileDocument, after: FileDocument): ReadonlySet<string> | 'all' {
  if (was.node.is !== 'map' || was.field?.is === 'table') return sameSlot(was, is, before, after) ? none : 'all';
  let changed: Set<string> | undefined;
  const sameOrder = was.kids.length === is.kids.length && was.kids.every((kid, i) => kid.key === is.kids[i]!.key);
  for (const [i, kid] of was.kids.entries()) {
    const other = sameOrder ? is.kids[i] : kidOf(is, kid.key);
    if (!other || !sameSlot(kid, other, before, after)) changed = (changed ?? new Set()).add(kid.key);
  }
  if (!sameOrder) for (const kid of is.kids) if (!kidOf(was, kid.key)) changed = (changed ?? new Set()).add(kid.key);
  if (!changed) return sameOrder ? none : 'all';
  return changed.has('use') || changed.has('kind') ? 'all' : changed;
}

const none: ReadonlySet<string> = new Set();

/** Whether two slots hold the same keys in the same order, each with something of the same kind. */
const sameForm = (was: Slot, is: Slot, before: FileDocument, after: FileDocument): boolean =>
  was.node.is === is.node.is &&
  was.kids.length === is.kids.length &&
  was.kids.every((kid, i) => {
    const other = is.kids[i]!;
    return kid.key === other.key && kid.node.is === other.node.is && isWrong(kid, before) === isWrong(other, after);
  });

/** Whether two slots say the same, word for word. */
function sameSlot(was: Slot, is: Slot, before: FileDocument, after: FileDocument): boolean {
  if (was === is) return true;
  const [a, b] = [was.node, is.node];
  if (was.key !== is.key || was.field !== is.field || a.is !== b.is || isWrong(was, before) !== isWrong(is, after))
    return false;
  if (a.is === 'scalar' && b.is === 'scalar' && (a.text !== b.text || a.style !== b.style)) return false;
  if (was.kids.length !== is.kids.length) return false;
  for (let i = 0; i < was.kids.length; i++) if (!sameSlot(was.kids[i]!, is.kids[i]!, before, after)) return false;
  return true;
}
