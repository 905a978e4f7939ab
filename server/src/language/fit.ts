/** Which parts of the library fit the rest of a build in one place, by the same checks that judge the build. Edits nothing. */
import { craftsOf } from '../analysis';
import type { Craft } from '../build/craft';
import type { Finding } from '../build/finding';
import type { Check, Need } from '../checks/check';
import { allChecks } from '../checks/generated/all';
import { runChecks } from '../checks/run';
import type { LibraryPart, Workspace } from '../library/workspace';
import { restsOn, type WorkedAt } from '../plan/worked';

export interface Fit {
  readonly part: LibraryPart;
  /** The first thing that would not fit; absent when nothing was found. */
  readonly misfit: Finding | undefined;
}

/** The place in a build where a part is wanted. */
export interface PartPlace {
  readonly uri: string;
  /** `/parts/motors`, `/packs/main` */
  readonly pointer: string;
  readonly kind: string;
}

/** Parts judged one by one; beyond this many the rest is listed without a verdict, so that a large library stays quick. */
const judged = 120;

export function fitting(workspace: Workspace, place: PartPlace): readonly Fit[] {
  const parts = [...workspace.parts().keys()].flatMap((id) => {
    const part = workspace.find(id, place.uri);
    return part?.kind === place.kind ? [part] : [];
  });
  const checks = checksAbout(place);
  const fits = parts.map(
    (part, i): Fit => ({ part, misfit: i < judged ? misfitOf(workspace, place, part.id, checks) : undefined }),
  );
  return fits.sort(
    (a, b) => Number(a.misfit !== undefined) - Number(b.misfit !== undefined) || (a.part.id < b.part.id ? -1 : 1),
  );
}

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
  const wanted = first === 'packs' ? ['pack'] : (heads[role] ?? [role]);
  const about = (need: Need): boolean =>
    need.startsWith('worked.') ? restsOn[need as keyof WorkedAt].some(about) : wanted.includes(need.split('.')[0]!);
  return allChecks.filter((check) => [...Object.values(check.needs), ...Object.values(check.may)].some(about));
}
