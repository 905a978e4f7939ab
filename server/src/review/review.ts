/** A review: two versions of a repository's builds side by side, as data. Compares; words and lays out nothing. */
import { type Analysis, analyse } from '../analysis';
import type { Craft } from '../build/craft';
import { gravity, type Severity } from '../build/finding';
import type { SourceFile } from '../build/source-file';
import { folderOf } from '../library/workspace';
import type { FileKind } from '../vocabulary';
import { documentSaid } from './build-said';
import { type Change, changesBetween } from './change';
import { type DifferingBuild, differences } from './differing';
import { type Figure, type FigureChange, figureChanges, type PackFigures } from './figures';
import { type FilePair, nameOf } from './file-pairs';
import { compareFindings, type FindingChanges, introducesAt, noFindings } from './findings';
import type { PartChange } from './library';
import { type PriceChange, priceChange } from './price';
import { type Swap, saysTheSame, swapsOf } from './swaps';
import { letGo, type Side, type Sides, sidesOf, type Texts } from './texts';

export type Status = 'changed' | 'affected' | 'added' | 'deleted' | 'renamed' | 'moved' | 'formatting';

export interface BuildReview<F extends Figure = Figure> {
  /** Address in the newer version; in the older one when it is deleted. */
  readonly file: string;
  readonly from?: string;
  readonly status: Status;
  readonly name: string;
  readonly craft?: string;
  readonly changes: readonly Change[];
  readonly swaps: readonly Swap[];
  readonly figures: readonly FigureChange<F>[];
  readonly findings: FindingChanges;
  readonly price?: PriceChange;
  /** Parts it uses that changed, as `file id`. */
  readonly draws: ReadonlySet<string>;
}

export interface FileReview {
  readonly file: string;
  readonly from?: string;
  readonly status: Status;
  readonly kind?: FileKind;
  /** What differs in a bench, in settings or in shops. */
  readonly changes: readonly Change[];
  /** What differs in a parts file. */
  readonly parts: readonly PartChange[];
  readonly findings: FindingChanges;
}

export interface Review<F extends Figure = Figure> {
  readonly builds: readonly BuildReview<F>[];
  readonly files: readonly FileReview[];
  readonly sides: Sides;
}

export interface ReviewOptions<F extends Figure> {
  /** Today as YYYY-MM-DD. */
  readonly today?: string;
  readonly bench?: string;
  /** Called before each file that is read or judged; throws when there is no more time. */
  readonly beforeEach?: () => void;
  /** Figures of a craft, the pack that it flies first. */
  readonly figuresOf: (craft: Craft, analysis: Analysis) => readonly PackFigures<F>[];
}

export function review<F extends Figure>(before: Texts, after: Texts, options: ReviewOptions<F>): Review<F> {
  const sides = sidesOf(before, after, options.beforeEach);
  const { library, others, builds } = differences(sides, options.bench);
  const renamedParts = new Map(library.flatMap(({ id, was }) => (was === undefined ? [] : [[id, was] as const])));
  const reviewed: BuildReview<F>[] = [];
  for (const build of builds) {
    options.beforeEach?.();
    const one = reviewBuild(build, sides, renamedParts, library, options);
    if (!build.onlyByFindings || saysSomething(one.findings)) reviewed.push(one);
    if (build.after) letGo(sides, build.after.uri);
  }
  return {
    builds: reviewed.sort(gravestFirst),
    files: reviewFiles(sides, others, library, options),
    sides,
  };
}

function reviewBuild<F extends Figure>(
  build: DifferingBuild,
  sides: Sides,
  renamedParts: ReadonlyMap<string, string>,
  library: readonly PartChange[],
  options: ReviewOptions<F>,
): BuildReview<F> {
  const { before, after, saidBefore, saidAfter, changes } = build;
  const [old, now] = [analysed(sides.before, before, options), analysed(sides.after, after, options)];
  const swaps = swapsOf(changes, saidBefore, saidAfter, renamedParts);
  const packs = new Map(
    swaps.flatMap(({ is, head, wasHead }) =>
      is === 'renamed' && wasHead ? [[head.slice(6), wasHead.slice(6)] as const] : [],
    ),
  );
  const findings = !now
    ? noFindings
    : compareFindings(old?.findings ?? [], now.findings, (fingerprint) => withPacksRenamed(fingerprint, packs));
  const [craftBefore, craftAfter] = [old?.crafts[0], now?.crafts[0]];
  const figuresOf = (craft: Craft | undefined, analysis: Analysis | undefined): readonly PackFigures<F>[] =>
    craft && analysis ? options.figuresOf(craft, analysis) : [];
  const file = (after ?? before)!;
  return {
    file: file.uri,
    from: before && after && before.uri !== after.uri ? before.uri : undefined,
    status: statusOf(build, findings),
    name: (craftAfter ?? craftBefore)?.said.name?.value ?? '',
    craft: (craftAfter ?? craftBefore)?.said.craft?.value,
    changes,
    swaps,
    figures: figureChanges(figuresOf(craftBefore, old), figuresOf(craftAfter, now), packs),
    findings,
    price: priceChange(craftBefore, craftAfter),
    draws: drawn(build, library),
  };
}

const analysed = (
  side: Side,
  file: SourceFile | undefined,
  { today, bench }: { today?: string; bench?: string },
): Analysis | undefined => file && analyse(side.workspace, file.uri, { today, bench });

function statusOf({ before, after, changes }: DifferingBuild, findings: FindingChanges): Status {
  if (!before) return 'added';
  if (!after) return 'deleted';
  if (before.uri !== after.uri) return nameOf(before.uri) === nameOf(after.uri) ? 'moved' : 'renamed';
  if (changes.some((change) => change.own)) return 'changed';
  if (changes.length > 0) return 'affected';
  if (before.text === after.text) return 'affected';
  return saysSomething(findings) ? 'changed' : 'formatting';
}

const saysSomething = ({ introduced, resolved, accepted }: FindingChanges): boolean =>
  introduced.length + resolved.length + accepted.length > 0;

/** Which of the changed parts show in what differs in a build. */
function drawn({ changes }: DifferingBuild, library: readonly PartChange[]): ReadonlySet<string> {
  const shows = new Set<string>();
  for (const { beforeAt, afterAt } of changes)
    for (const at of [beforeAt, afterAt]) if (at) shows.add(`${at.file} ${at.path.split('.', 2)[1]}`);
  return new Set(
    library.flatMap(({ file, fromFile, id, was }) =>
      shows.has(`${file} ${id}`) || shows.has(`${fromFile ?? file} ${was ?? id}`) ? [`${file} ${id}`] : [],
    ),
  );
}

/** @param packs names before by names after */
function withPacksRenamed(fingerprint: string, packs: ReadonlyMap<string, string>): string {
  let out = fingerprint;
  for (const [now, was] of packs)
    out = out
      .split('@')
      .map((step) =>
        step === was
          ? now
          : step.startsWith(`packs.${was}.`)
            ? `packs.${now}${step.slice(6 + was.length)}`
            : step.startsWith(`${was}/`)
              ? now + step.slice(was.length)
              : step,
      )
      .join('@');
  return out;
}

const worst = ({ findings }: { findings: FindingChanges }): number =>
  Math.min(3, ...findings.introduced.map(({ finding }) => gravity(finding.severity)));
const statuses: readonly Status[] = ['changed', 'renamed', 'moved', 'added', 'deleted', 'affected', 'formatting'];

const gravestFirst = (a: BuildReview, b: BuildReview): number =>
  worst(a) - worst(b) ||
  Number(statuses.indexOf(a.status) > 4) - Number(statuses.indexOf(b.status) > 4) ||
  Number(a.status === 'formatting') - Number(b.status === 'formatting') ||
  (a.file < b.file ? -1 : 1);

function reviewFiles(
  sides: Sides,
  pairs: readonly FilePair[],
  library: readonly PartChange[],
  options: { today?: string; bench?: string },
): readonly FileReview[] {
  const changed = pairs.map((pair) => reviewFile(sides, pair, library, options));
  // What one parts file says may be said by its neighbour too.
  const folders = new Set(
    pairs.flatMap((pair) => [pair.before, pair.after].flatMap((uri) => (uri ? folderOf(uri) : []))),
  );
  const known = new Set(pairs.map((pair) => pair.after));
  const neighbours = [...new Set(sides.after.workspace.documents('parts').map(({ file }) => file.uri))]
    .filter((uri) => folders.has(folderOf(uri)) && !known.has(uri) && sides.before.workspace.get(uri))
    .map((uri) => reviewFile(sides, { before: uri, after: uri }, [], options))
    .filter(({ findings }) => findings.introduced.length + findings.resolved.length > 0);
  return [...changed, ...neighbours].sort((a, b) => worst(a) - worst(b) || (a.file < b.file ? -1 : 1));
}

function reviewFile(
  sides: Sides,
  { before, after }: FilePair,
  library: readonly PartChange[],
  options: { today?: string; bench?: string },
): FileReview {
  const [a, b] = [sides.before.workspace.get(before ?? ''), sides.after.workspace.get(after ?? '')];
  const [old, now] = [analysed(sides.before, a, options), analysed(sides.after, b, options)];
  const uri = after ?? before!;
  const parts = library.filter(({ file, fromFile }) => file === uri || (fromFile !== undefined && fromFile === before));
  const renames = new Map(parts.flatMap(({ id, was }) => (was === undefined ? [] : [[was, id] as const])));
  const findings = now
    ? compareFindings(old?.findings ?? [], now.findings, (fingerprint) =>
        fingerprint.replace(/@parts\.([^.@]+)/, (all, id: string) =>
          renames.has(id) ? `@parts.${renames.get(id)}` : all,
        ),
      )
    : noFindings;
  const kind = kindOf(b) ?? kindOf(a);
  const [saidBefore, saidAfter] = [documentSaid(a, kind), documentSaid(b, kind)];
  const shown = kind === 'parts' ? (path: string): boolean => !path.startsWith('parts.') : (): boolean => true;
  const changes = changesBetween(saidBefore, saidAfter).filter(({ path }) => shown(path));
  return {
    file: uri,
    from: before !== undefined && after !== undefined && before !== after ? before : undefined,
    status: fileStatus(before, after, saysTheSame(saidBefore, saidAfter), findings),
    kind,
    changes: before === undefined || after === undefined ? [] : changes,
    parts,
    findings,
  };
}

function fileStatus(
  before: string | undefined,
  after: string | undefined,
  same: boolean,
  findings: FindingChanges,
): Status {
  if (before === undefined) return 'added';
  if (after === undefined) return 'deleted';
  if (before !== after) return nameOf(before) === nameOf(after) ? 'moved' : 'renamed';
  return same && findings.introduced.length + findings.resolved.length === 0 ? 'formatting' : 'changed';
}

const kindOf = (file: SourceFile | undefined): FileKind | undefined =>
  file?.documents.find((document) => document.kind !== undefined)?.kind;

/** Whether the change makes a check fail that passed before. */
export const failsAt = ({ builds, files }: Review, threshold: Severity): boolean =>
  [...builds, ...files].some(({ findings }) => introducesAt(findings, threshold));

export const crashed = ({ builds, files }: Review): boolean =>
  [...builds, ...files].some(({ findings }) =>
    [...findings.introduced.map(({ finding }) => finding), ...findings.remaining].some(
      ({ check }) => check === 'check-crashed',
    ),
  );
