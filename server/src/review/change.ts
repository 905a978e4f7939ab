/** One value that differs between two versions, and how two sets of what is said differ. Words nothing. */
import type { Place } from '../build/place';
import { type Said, type SaidMap, sameSaid } from './said';

export interface Change {
  /** Dotted path, as in `parts.motors.kv`. */
  readonly path: string;
  /** As written; nothing when it wasn't said. */
  readonly before: string | null;
  readonly after: string | null;
  readonly beforeAt?: Place;
  readonly afterAt?: Place;
  readonly head: string;
  /** Said in the build itself on one side at least, not only in a parts file. */
  readonly own: boolean;
}

export function changesBetween(before: SaidMap, after: SaidMap): readonly Change[] {
  const differing = new Set<string>();
  for (const [path, said] of after) if (!sameSaid(before.get(path), said)) differing.add(path);
  for (const path of before.keys()) if (!after.has(path)) differing.add(path);
  if (differing.size === 0) return [];
  const paths = inOrder([...after.keys()], [...before.keys()]);
  return paths.flatMap((path) => {
    if (!differing.has(path)) return [];
    const [a, b] = [before.get(path), after.get(path)];
    return a?.rows || b?.rows ? rowChanges(path, a, b) : [change(path, a, b, a?.text ?? null, b?.text ?? null)];
  });
}

/** The order of the newer version, with what is gone where it stood. */
function inOrder(after: readonly string[], before: readonly string[]): readonly string[] {
  const known = new Set(after);
  const out = [...after];
  let at = -1;
  for (const path of before) {
    if (known.has(path)) at = out.indexOf(path);
    else out.splice(++at, 0, path);
  }
  return out;
}

function change(
  path: string,
  a: Said | undefined,
  b: Said | undefined,
  before: string | null,
  after: string | null,
): Change {
  const own = [a, b].some((said) => said !== undefined && said.through === undefined);
  return { path, before, after, beforeAt: a?.at, afterAt: b?.at, head: (b ?? a)!.head, own };
}

/** Rows that are on both sides are no change, wherever they stand; the others are told one against one. */
function rowChanges(path: string, a: Said | undefined, b: Said | undefined): readonly Change[] {
  const gone = [...rowsOf(a)];
  const come: string[] = [];
  for (const row of rowsOf(b)) {
    const same = gone.indexOf(row);
    if (same === -1) come.push(row);
    else gone.splice(same, 1);
  }
  const pairs = Math.max(gone.length, come.length);
  return Array.from({ length: pairs }, (_, i) => change(path, a, b, gone[i] ?? null, come[i] ?? null));
}

const rowsOf = (said: Said | undefined): readonly string[] => said?.rows ?? (said ? [said.text] : []);
