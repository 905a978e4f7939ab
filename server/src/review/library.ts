/** How the parts files of two versions differ: parts added, taken out, renamed, moved, changed. Doesn't ask who uses them. */
import type { Place } from '../build/place';
import type { LibraryPart, Workspace } from '../library/workspace';
import { type Change, changesBetween } from './change';
import { nowhere, type SaidMap, saidOf, sameSaid, usedIds } from './said';

export interface PartChange {
  readonly is: 'added' | 'taken out' | 'renamed' | 'moved' | 'changed';
  readonly id: string;
  /** The id before, when it was another one. */
  readonly was?: string;
  readonly kind: string;
  /** Address of the file it is in, or was in. */
  readonly file: string;
  readonly fromFile?: string;
  readonly fields: readonly Change[];
  readonly at: Place;
}

interface Entry {
  readonly part: LibraryPart;
  readonly said: SaidMap;
}

export function libraryChanges(
  before: Workspace,
  after: Workspace,
  pairedFiles: ReadonlyMap<string, string>,
): readonly PartChange[] {
  const gone = entriesOf(before);
  const come = entriesOf(after);
  const changes: PartChange[] = [];
  const pair = (a: Entry, b: Entry): void => {
    const fields = changesBetween(a.said, b.said);
    const moved = (pairedFiles.get(a.part.at.file) ?? a.part.at.file) !== b.part.at.file;
    const renamed = a.part.id !== b.part.id;
    if (fields.length === 0 && !moved && !renamed) return;
    changes.push({
      is: renamed ? 'renamed' : fields.length > 0 ? 'changed' : 'moved',
      id: b.part.id,
      was: renamed ? a.part.id : undefined,
      kind: b.part.kind,
      file: b.part.at.file,
      fromFile: moved ? a.part.at.file : undefined,
      fields,
      at: b.part.at,
    });
  };
  matchAll(gone, come, pairedFiles, pair);
  for (const entry of come) changes.push(alone('added', entry));
  for (const entry of gone) changes.push(alone('taken out', entry));
  return changes.sort((a, b) => (a.file === b.file ? (a.id < b.id ? -1 : 1) : a.file < b.file ? -1 : 1));
}

/** Same id in the same file; then same id anywhere; then another id for what is the same part, or nearly. */
function matchAll(
  gone: Entry[],
  come: Entry[],
  pairedFiles: ReadonlyMap<string, string>,
  pair: (a: Entry, b: Entry) => void,
): void {
  const take = (fits: (a: Entry, b: Entry) => boolean): void => {
    for (let i = 0; i < come.length; ) {
      const j = gone.findIndex((a) => fits(a, come[i]!));
      if (j === -1) i++;
      else pair(gone.splice(j, 1)[0]!, come.splice(i, 1)[0]!);
    }
  };
  const byIdAndFile = new Map(
    gone.map((a) => [`${pairedFiles.get(a.part.at.file) ?? a.part.at.file} ${a.part.id}`, a]),
  );
  const matched = new Set<Entry>();
  for (const b of come) {
    const a = byIdAndFile.get(`${b.part.at.file} ${b.part.id}`);
    if (!a || matched.has(a)) continue;
    matched.add(a);
    matched.add(b);
    pair(a, b);
  }
  for (const list of [gone, come]) list.splice(0, list.length, ...list.filter((entry) => !matched.has(entry)));
  if (gone.length * come.length > 250_000) return;
  take((a, b) => a.part.id === b.part.id);
  take((a, b) => likeness(a.said, b.said) === 1);
  take((a, b) => a.part.kind === b.part.kind && likeness(a.said, b.said) >= 0.75);
}

/** Share of what is said that is the same on both sides. */
function likeness(a: SaidMap, b: SaidMap): number {
  const most = Math.max(a.size, b.size);
  if (most < 3) return 0;
  let same = 0;
  for (const [path, said] of a) if (sameSaid(said, b.get(path))) same++;
  return same / most;
}

const entriesOf = (workspace: Workspace): Entry[] =>
  [...workspace.parts().values()].flat().map((part) => ({ part, said: saidOf(part.layer, nowhere) }));

const alone = (is: 'added' | 'taken out', { part }: Entry): PartChange => ({
  is,
  id: part.id,
  kind: part.kind,
  file: part.at.file,
  fields: [],
  at: part.at,
});

/** Words about a part that change nothing in a build. */
const onlyWords: ReadonlySet<string> = new Set(['name', 'note', 'source', 'seen']);
export const isOnlyWords = (path: string): boolean => onlyWords.has(path.split('.').at(-1)!);

/** Ids that may mean something else now, those that build on a changed one included. */
export function touchedIds(changes: readonly PartChange[], sides: readonly Workspace[]): ReadonlySet<string> {
  const touched = new Set<string>();
  for (const change of changes) {
    if (change.is === 'changed' && change.fields.every((field) => isOnlyWords(field.path))) continue;
    touched.add(change.id);
    if (change.was !== undefined) touched.add(change.was);
  }
  for (let grown = touched.size > 0; grown; ) {
    grown = false;
    for (const workspace of sides)
      for (const part of [...workspace.parts().values()].flat())
        if (!touched.has(part.id) && usedIds(part.layer.slot).some((id) => touched.has(id))) {
          touched.add(part.id);
          grown = true;
        }
  }
  return touched;
}
