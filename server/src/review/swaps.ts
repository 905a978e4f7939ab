/** What was swapped, part by part: groups changed values by the thing they belong to and says what happened to it. Words nothing for a reader. */
import type { Change } from './change';
import { type SaidMap, sameSaid } from './said';

export interface Swap {
  readonly is:
    | 'swapped'
    | 'added'
    | 'taken out'
    | 'changed'
    /** The same part under another id. */
    | 'part renamed'
    /** The same thing under another name, such as a pack. */
    | 'renamed'
    /** Its values, unchanged, come from a parts file now; or are written in the build now. */
    | 'from library'
    | 'written out'
    /** The part that it uses is in no parts file any more. */
    | 'lost';
  /** `parts.motors`, `packs.main`, `bench`; empty for what is said of the whole build. */
  readonly head: string;
  /** Ids of parts, or names, where they differ. */
  readonly before?: string;
  readonly after?: string;
  /** The id of the part whose own values changed in its parts file. */
  readonly part?: string;
  readonly fields: readonly Change[];
  /** Its name before, when that was another one. */
  readonly wasHead?: string;
}

/** @param renamedParts ids before by ids after */
export function swapsOf(
  changes: readonly Change[],
  before: SaidMap,
  after: SaidMap,
  renamedParts: ReadonlyMap<string, string>,
): readonly Swap[] {
  const byHead = new Map<string, Change[]>();
  for (const change of changes) byHead.set(change.head, [...(byHead.get(change.head) ?? []), change]);
  const renamed = renamedHeads([...byHead.keys()], before, after);
  const swaps: Swap[] = [];
  for (const [head, all] of byHead) {
    const to = renamed.get(head);
    if (to !== undefined) continue;
    const from = [...renamed].find(([, now]) => now === head)?.[0];
    if (from !== undefined) swaps.push({ is: 'renamed', head, wasHead: from, fields: [] });
    else swaps.push(swapOf(head, all, before, after, renamedParts));
  }
  return swaps;
}

function swapOf(
  head: string,
  all: readonly Change[],
  before: SaidMap,
  after: SaidMap,
  renamedParts: ReadonlyMap<string, string>,
): Swap {
  const single = /^(?:\d+: )?(?:parts|packs)\./.test(head);
  const use = `${head}.use`;
  const fields = all.filter((change) => change.path !== use && change.path !== `${head}.kind`);
  if (!single) return { is: 'changed', head, fields: all };
  const [was, now] = [before.get(use)?.text, after.get(use)?.text];
  const there = (said: SaidMap): boolean => [...said.values()].some((one) => one.head === head);
  if (!there(before)) return { is: 'added', head, after: now, fields: fields.filter((change) => change.own) };
  if (!there(after)) return { is: 'taken out', head, before: was, fields: fields.filter((change) => change.own) };
  if (was !== undefined && now !== undefined && was !== now)
    return {
      is: renamedParts.get(now) === was ? 'part renamed' : 'swapped',
      head,
      before: was,
      after: now,
      fields,
    };
  if (was === undefined && now !== undefined)
    return { is: fields.length === 0 ? 'from library' : 'swapped', head, after: now, fields };
  if (was !== undefined && now === undefined)
    return { is: fields.length === 0 ? 'written out' : 'swapped', head, before: was, fields };
  if (after.get(use)?.hidden === 'nothing' && before.get(use)?.hidden !== 'nothing') {
    const called = [...renamedParts].find(([, old]) => old === now)?.[0];
    return { is: 'lost', head, before: now, after: called, fields: fields.filter((change) => change.own) };
  }
  const library = fields.length > 0 && fields.every((change) => !change.own);
  return { is: 'changed', head, part: library ? now : undefined, fields };
}

/** Packs and entries of tables may have another name; a role's name is what it is. */
function renamedHeads(heads: readonly string[], before: SaidMap, after: SaidMap): ReadonlyMap<string, string> {
  const renamed = new Map<string, string>();
  const group = (said: SaidMap, head: string): ReadonlyMap<string, string> =>
    new Map([...said].filter(([, one]) => one.head === head).map(([path, one]) => [path.slice(head.length), one.text]));
  for (const section of ['packs', 'parts.adapters', 'parts.fasteners', 'parts.extras']) {
    const own = heads.filter((head) => head.slice(0, head.lastIndexOf('.')) === section);
    const gone = own.filter((head) => group(after, head).size === 0);
    const come = own.filter((head) => group(before, head).size === 0);
    for (const head of gone) {
      const was = group(before, head);
      const now = come.find((other) => {
        const is = group(after, other);
        return is.size === was.size && [...was].every(([path, text]) => is.get(path) === text);
      });
      if (now === undefined) continue;
      come.splice(come.indexOf(now), 1);
      renamed.set(head, now);
    }
  }
  return renamed;
}

/** Whether nothing but where values stand differs. */
export const saysTheSame = (before: SaidMap, after: SaidMap): boolean =>
  before.size === after.size && [...before].every(([path, said]) => sameSaid(said, after.get(path)));
