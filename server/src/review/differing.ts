/** Which builds differ between two versions: those whose words changed, and those that draw on something that changed. Others are not looked at. */
import { referencesIn } from '../analysis';
import { kidOf } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import { folderOf, type Workspace } from '../library/workspace';
import { buildSaid, documentSaid, type Narrowed } from './build-said';
import { type Change, changesBetween } from './change';
import { type FilePair, filePairs } from './file-pairs';
import { isOnlyWords, libraryChanges, type PartChange, touchedIds } from './library';
import { arePlain, mentions } from './quick-look';
import { boughtIds, type SaidMap, sameSaid, usedIds } from './said';
import { shopsSaid } from './shops-said';
import { saysTheSame } from './swaps';
import { readSame, type Sides } from './texts';

export interface DifferingBuild {
  readonly before?: SourceFile;
  readonly after?: SourceFile;
  readonly saidBefore: SaidMap;
  readonly saidAfter: SaidMap;
  readonly changes: readonly Change[];
  /** Nothing it says or uses differs, but what all are measured against does: it matters when its findings differ. */
  readonly onlyByFindings?: boolean;
}

export interface Differences {
  readonly library: readonly PartChange[];
  /** Files that are no builds and differ. */
  readonly others: readonly FilePair[];
  /** Found one by one, as there may be thousands. */
  readonly builds: Iterable<DifferingBuild>;
}

export function differences(sides: Sides, bench?: string): Differences {
  const { before, after } = sides;
  const pairs = filePairs(before.texts, after.texts);
  const pairedFiles = new Map(
    pairs.flatMap((pair) => (pair.before && pair.after ? [[pair.before, pair.after] as const] : [])),
  );
  const library = libraryChanges(before.workspace, after.workspace, pairedFiles);
  const isBuild = (pair: FilePair): boolean =>
    [before.workspace.get(pair.before ?? ''), after.workspace.get(pair.after ?? '')].some(holdsBuild);
  const others = pairs.filter((pair) => !isBuild(pair));
  return { library, others, builds: differing(sides, pairs.filter(isBuild), library, pairs, bench) };
}

/** An offer is about its part; terms are about all that the shop sells. */
const isAbout = (path: string, ids: ReadonlySet<string>): boolean =>
  !path.includes('.offers.') || ids.has(path.slice(path.indexOf('.offers.') + '.offers.'.length));

const boughtFor = (workspace: Workspace, file: SourceFile | undefined): ReadonlySet<string> =>
  new Set(
    file?.documents.flatMap(({ kind, slot }) =>
      kind === 'build' && slot ? [...boughtIds(slot, workspace.finder(file.uri))] : [],
    ),
  );

const sameShops = ({ before, after }: Sides, pair: FilePair): boolean =>
  saysTheSame(
    documentSaid(before.workspace.get(pair.before ?? ''), 'shops'),
    documentSaid(after.workspace.get(pair.after ?? ''), 'shops'),
  );

const holdsBuild = (file: SourceFile | undefined): boolean =>
  file?.documents.some((document) => document.kind === 'build') === true;

function* differing(
  sides: Sides,
  own: readonly FilePair[],
  library: readonly PartChange[],
  pairs: readonly FilePair[],
  bench: string | undefined,
): Generator<DifferingBuild> {
  const { before, after } = sides;
  const shops = { before: shopsSaid(before.workspace).all, after: shopsSaid(after.workspace).all };
  // Offers and terms that a build meets or leaves by a swap did not change themselves.
  const isReal = (path: string): boolean => !sameSaid(shops.before.get(path), shops.after.get(path));
  const compared = (old: SourceFile | undefined, now: SourceFile | undefined, narrowed?: Narrowed): DifferingBuild => {
    const saidBefore = buildSaid(before.workspace, old, bench, narrowed);
    const saidAfter = buildSaid(after.workspace, now, bench, narrowed);
    const used = [boughtFor(before.workspace, old), boughtFor(after.workspace, now)];
    const changes = changesBetween(saidBefore, saidAfter).filter(
      ({ head, path }) => head !== 'shops' || (isReal(path) && used.every((ids) => isAbout(path, ids))),
    );
    return { before: old, after: now, saidBefore, saidAfter, changes };
  };
  const seen = new Set<string>();
  for (const pair of own) {
    if (pair.after !== undefined) seen.add(pair.after);
    yield compared(before.workspace.get(pair.before ?? ''), after.workspace.get(pair.after ?? ''));
  }
  const touched = touchedIds(library, [before.workspace, after.workspace]);
  const keys = changedKeys(library, touched, sides);
  const ids = new Set([...touched, ...changedOffers(sides)]);
  const allPlain = arePlain(ids);
  const folders = changedSurroundings(sides, pairs);
  const classes = changedReferences(sides, own, compared);
  // How old a price is, and which order is cheapest, is told from all offers together.
  const shopsDiffer = pairs.some((pair) => !sameShops(sides, pair));
  if (ids.size === 0 && folders.length === 0 && classes.size === 0 && !shopsDiffer) return;
  for (const [uri, text] of after.texts) {
    if (seen.has(uri) || before.texts.get(uri) !== text) continue;
    const around = folders.some((folder) => uri.startsWith(folder));
    const measured = shopsDiffer || mentions(text, classes, true);
    if (!around && !measured && !mentions(text, ids, allPlain)) continue;
    const file = readSame(sides, uri);
    if (!holdsBuild(file)) continue;
    const found = compared(file, file, { ids, keys, around });
    // A word about a part that means nothing to any check.
    if (found.changes.some((change) => change.own || !isOnlyWords(change.path))) yield found;
    else if (measured) yield { ...found, onlyByFindings: true };
  }
}

/** Classes of craft of which a reference came, went or says something else. */
function changedReferences(
  { before, after }: Sides,
  own: readonly FilePair[],
  compared: (old: SourceFile | undefined, now: SourceFile | undefined) => DifferingBuild,
): ReadonlySet<string> {
  const classes = new Set<string>();
  const crafts = [...referencesIn(before.workspace), ...referencesIn(after.workspace)];
  const was = new Map(own.map((pair) => [pair.after ?? pair.before!, pair.before] as const));
  for (const { file, said } of crafts) {
    const kind = said.craft?.value;
    if (kind === undefined || classes.has(kind)) continue;
    const old = before.workspace.get(was.has(file) ? (was.get(file) ?? '') : file);
    if (compared(old, after.workspace.get(file)).changes.length > 0) classes.add(kind);
  }
  return classes;
}

/** The fields that may differ, when parts only changed and none holds another part whose fields are deeper. */
function changedKeys(
  library: readonly PartChange[],
  touched: ReadonlySet<string>,
  { before, after }: Sides,
): ReadonlySet<string> | undefined {
  const holdsOther = [...touched].some((id) =>
    [before, after].some(({ workspace }) =>
      workspace
        .parts()
        .get(id)
        ?.some(({ layer }) => usedIds(layer.slot).length > (kidOf(layer.slot, 'use') ? 1 : 0)),
    ),
  );
  if (holdsOther || library.some(({ is }) => is !== 'changed')) return undefined;
  return new Set(['use', 'kind', ...library.flatMap(({ fields }) => fields.map(({ path }) => path.split('.')[0]!))]);
}

function changedOffers({ before, after }: Sides): readonly string[] {
  const [old, now] = [shopsSaid(before.workspace).byPart, shopsSaid(after.workspace).byPart];
  return [...new Set([...old.keys(), ...now.keys()])].filter((id) => {
    const [a, b] = [old.get(id), now.get(id)];
    return a?.size !== b?.size || [...(a ?? [])].some(([path, said]) => !sameSaid(said, b?.get(path)));
  });
}

/** Folders in which another bench or other settings may apply. */
function changedSurroundings({ before, after }: Sides, pairs: readonly FilePair[]): readonly string[] {
  return pairs.flatMap((pair) => {
    const [old, now] = [before.workspace.get(pair.before ?? ''), after.workspace.get(pair.after ?? '')];
    const matters = (['bench', 'settings'] as const).some((kind) =>
      pair.before !== pair.after
        ? [old, now].some((file) => file?.documents.some((document) => document.kind === kind))
        : changesBetween(documentSaid(old, kind), documentSaid(now, kind)).length > 0,
    );
    return matters ? [pair.before, pair.after].flatMap((uri) => (uri === undefined ? [] : [folderOf(uri)])) : [];
  });
}
