/** Which parts of the library fit the rest of a build in one place, by the same checks that judge the build. Edits nothing. */
import { craftsOf } from '../analysis';
import type { Craft } from '../build/craft';
import type { Finding } from '../build/finding';
import type { Check, Need } from '../checks/check';
import { allChecks } from '../checks/generated/all';
import { runChecks } from '../checks/run';
import { alike } from '../library/alike';
import type { LibraryPart, Workspace } from '../library/workspace';
import { restsOn, type WorkedAt } from '../plan/worked';
import { own } from '../text/own';
import type { Span } from '../text/span';

export interface Fit {
  readonly part: LibraryPart;
  /** The first thing that would not fit; absent when nothing was found. */
  readonly misfit: Finding | undefined;
  /** Whether it was looked at; of a large library only some are. */
  readonly judged: boolean;
}

/** The place in a build where a part is wanted. */
export interface PartPlace {
  readonly uri: string;
  /** `/parts/motors`, `/packs/main` */
  readonly pointer: string;
  readonly kind: string;
}

/** What somebody has typed so far in that place, and the word it is of. */
export interface Typing {
  readonly typed: string;
  readonly word: Span;
}

/** Parts judged one by one; beyond this many the rest is listed without a verdict, so that a large library stays quick. */
const judged = 60;

/** More are of no use in a list. */
export const mostListed = 200;

/** Those that fit first, then those that are like them, last those that don't; of a large library the ones that hold what is typed. */
export function fitting(workspace: Workspace, place: PartPlace, typing?: Typing): readonly Fit[] {
  const groups = narrowed(alike(workspace, place.kind), typing?.typed ?? '');
  const misfit = verdicts(workspace, place, typing);
  const verdictOf = new Map<number, boolean>();
  const fits = byTurns(groups, mostListed).flatMap(([id, group]) => {
    const part = workspace.find(id, place.uri);
    return part?.kind === place.kind ? [{ part, group }] : [];
  });
  const ranked = fits.map(({ part, group }, i) => {
    const isJudged = i < judged;
    const why = isJudged ? misfit(part.id) : undefined;
    if (isJudged && !verdictOf.has(group)) verdictOf.set(group, why === undefined);
    const fit: Fit = { part, misfit: why, judged: isJudged };
    return { fit, group };
  });
  const rank = ({ fit, group }: (typeof ranked)[number]): number => {
    if (fit.judged) return fit.misfit ? 4 : 0;
    const same = verdictOf.get(group);
    return same === undefined ? 2 : same ? 1 : 3;
  };
  return ranked.sort((a, b) => rank(a) - rank(b) || (a.fit.part.id < b.fit.part.id ? -1 : 1)).map(({ fit }) => fit);
}

/** Of a list that is too long, the ids that hold the letters in their order, as editors match them. */
function narrowed(groups: readonly (readonly string[])[], typed: string): readonly (readonly string[])[] {
  const count = groups.reduce((sum, ids) => sum + ids.length, 0);
  if (count <= mostListed || typed === '') return groups;
  const letters = [...typed.toLowerCase()];
  const holds = (id: string): boolean => {
    const text = id.toLowerCase();
    let at = -1;
    return letters.every((letter) => {
      at = text.indexOf(letter, at + 1);
      return at >= 0;
    });
  };
  const held = groups.map((ids) => ids.filter(holds)).filter((ids) => ids.length > 0);
  return held.length > 0 ? held : groups;
}

/** One of each group in turn, so that few of them show what there is. */
function byTurns(groups: readonly (readonly string[])[], most: number): readonly (readonly [string, number])[] {
  const out: (readonly [string, number])[] = [];
  const longest = groups.reduce((longest, { length }) => Math.max(longest, length), 0);
  for (let turn = 0; turn < longest && out.length < most; turn++)
    for (const [group, ids] of groups.entries()) {
      const id = ids[turn];
      if (id !== undefined && out.length < most) out.push([id, group]);
    }
  return out;
}

/** Verdicts about one place are kept while only the id typed there changes. */
function verdicts(
  workspace: Workspace,
  place: PartPlace,
  typing: Typing | undefined,
): (id: string) => Finding | undefined {
  const text = workspace.get(place.uri)?.text ?? '';
  // Another part is put in its place, so that no verdict rests on the word itself.
  const around = typing ? `${text.slice(0, typing.word.start)}\u0000${text.slice(typing.word.end)}` : text;
  const key = `${workspace.version} ${place.uri} ${place.pointer} ${place.kind} ${around}`;
  const known = lastVerdicts.get(workspace);
  const kept = known?.key === key ? known : { key, misfits: new Map<string, Finding | undefined>() };
  lastVerdicts.set(workspace, kept);
  const checks = checksAbout(place);
  return (id) => {
    if (!kept.misfits.has(id)) kept.misfits.set(id, misfitOf(workspace, place, id, checks));
    return kept.misfits.get(id);
  };
}

const lastVerdicts = new WeakMap<
  Workspace,
  { readonly key: string; readonly misfits: Map<string, Finding | undefined> }
>();

export function craftWith(workspace: Workspace, place: PartPlace, id: string): Craft | undefined {
  const file = workspace.get(place.uri);
  return file && craftsOf(workspace, file, undefined, { pointer: place.pointer, id })[0];
}

function misfitOf(workspace: Workspace, place: PartPlace, id: string, checks: readonly Check[]): Finding | undefined {
  const craft = craftWith(workspace, place, id);
  if (!craft) return undefined;
  const grave = runChecks(checks, craft).findings.filter((finding) => finding.severity !== 'information');
  return grave.find((finding) => finding.severity === 'error') ?? grave[0];
}

const heads: Readonly<Record<string, readonly string[]>> = {
  stack: ['stack', 'esc', 'flight-controller'],
  'all-in-one': ['all-in-one', 'esc', 'flight-controller', 'receiver', 'video-transmitter'],
};

/** Checks that look at what stands in this place. */
function checksAbout(place: PartPlace): readonly Check[] {
  const [, first, role = ''] = place.pointer.split('/');
  const wanted = first === 'packs' ? ['pack'] : (own(heads, role) ?? [role]);
  const about = (need: Need): boolean =>
    need.startsWith('worked.') ? restsOn[need as keyof WorkedAt].some(about) : wanted.includes(need.split('.')[0]!);
  return allChecks.filter((check) => [...Object.values(check.needs), ...Object.values(check.may)].some(about));
}
