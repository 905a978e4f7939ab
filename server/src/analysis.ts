/** The one question that every face asks: what is to be said about this file, given its workspace. Pure; words come from the checks. */
import { type Craft, resolveCraft } from './build/craft';
import { bySeverity, type Finding, fingerprintOf, type Severity } from './build/finding';
import type { SettingsFileFacts } from './build/generated/facts';
import { placeOf } from './build/read-facts';
import { kidOf, type Slot } from './build/slot';
import type { SourceFile } from './build/source-file';
import { structureFindings } from './build/structure';
import { acceptFindings } from './checks/accept';
import type { Check } from './checks/check';
import { allChecks } from './checks/generated/all';
import { missingFacts } from './checks/missing';
import { isCheck } from './checks/names';
import { doubledFindings, lostFindings } from './checks/parts-of-craft';
import { profileFor } from './checks/region';
import { type CheckRun, type NotChecked, runChecks } from './checks/run';
import { type LastRun, runAgain } from './checks/run-again';
import { shopFindings } from './checks/shop-files';
import { folderOf, type Workspace } from './library/workspace';
import { regionFact } from './plan/rules';
import { limits } from './text/limits';
import { nearest } from './text/nearest';

export interface Analysis {
  readonly file: SourceFile;
  readonly findings: readonly Finding[];
  /** Ids of checks that compared something in this file. */
  readonly ran: readonly string[];
  readonly notChecked: readonly NotChecked[];
  /** One a document that is a build. */
  readonly crafts: readonly Craft[];
  /** What the next analysis of this file may take over, as long as nothing else in the workspace changes. */
  readonly left: { readonly shared: number; readonly run: LastRun | undefined };
}

export interface AnalysisOptions {
  /** URI of the bench file to use instead of the nearest one. */
  readonly bench?: string;
  readonly checks?: readonly Check[];
  /** Today as YYYY-MM-DD; without it nothing is called old. */
  readonly today?: string;
  /** The last analysis of the same file, with the same options: what cannot have changed since is taken over from it. */
  readonly before?: Analysis;
}

export function analyse(workspace: Workspace, uri: string, options: AnalysisOptions = {}): Analysis | undefined {
  const file = workspace.get(uri);
  if (!file) return undefined;
  const crafts = craftsOf(workspace, file, options.bench);
  const findings: Finding[] = [
    ...structureFindings(file),
    ...libraryFindings(workspace, file),
    ...settingsFindings(file),
    ...shopFindings(workspace, file),
  ];
  const runs: CheckRun[] = [];
  const notChecked: NotChecked[] = [];
  const shared = workspace.version;
  const known = options.before?.left.shared === shared ? options.before.left.run : undefined;
  const checks = options.checks ?? allChecks;
  // A file is mostly opened and read; only once it is edited does it pay to note what each check looks at.
  const edited = options.before !== undefined && file.documents.length === 1;
  let left: LastRun | undefined;
  for (const craft of crafts) {
    // A craft written down for comparison is nobody's purchase and may leave anything open: only its values are looked at.
    const isReference = craft.said.reference?.value === true;
    let run: CheckRun;
    if (edited && !isReference) ({ run, last: left } = runAgain(checks, craft, file.documents[0]!, known));
    else run = runChecks(isReference ? checks.filter((check) => check.group === 'data') : checks, craft);
    const own = [...lostFindings(workspace, craft), ...doubledFindings(craft), ...run.findings];
    findings.push(...acceptFindings(craft, own, run.ran), ...oldProfile(craft, options.today));
    runs.push(run);
    if (isReference) continue;
    notChecked.push(...run.notChecked);
    if (run.notChecked.length > 0) findings.push(factsMissing(craft, run.notChecked));
  }
  const settings = workspace.settingsFor(uri);
  const shown = held(
    findings
      .map((finding) => withSettings(finding, settings))
      .filter((finding): finding is Finding => finding !== undefined),
    file,
  );
  return {
    file,
    findings: shown,
    ran: runs.length === 1 ? runs[0]!.ran : [...new Set(runs.flatMap((run) => run.ran))],
    notChecked,
    crafts,
    left: { shared, run: left },
  };
}

export function craftsOf(workspace: Workspace, file: SourceFile, bench?: string, swap?: Swap): readonly Craft[] {
  const builds = file.documents.filter((document) => document.kind === 'build');
  if (builds.length === 0) return [];
  const find = workspace.finder(file.uri);
  const around = {
    find: (id: string | undefined, at?: Slot) => find(swap && at?.pointer === swap.pointer ? swap.id : id),
    bench: workspace.benchFor(file.uri, bench),
    settings: workspace.settingsFor(file.uri),
    shops: workspace.shops(),
    references: () => referencesIn(workspace),
  };
  return builds.flatMap((document) => resolveCraft(file, document, around) ?? []);
}

/** Builds of the workspace marked as references; resolved again only when one of them or a library has changed. */
export function referencesIn(workspace: Workspace): readonly Craft[] {
  const known = resolvedReferences.get(workspace);
  if (known?.at === workspace.version) return known.crafts;
  const crafts = referenceFiles(workspace)
    .flatMap((file) => craftsOf(workspace, file))
    .filter((craft) => craft.said.reference?.value === true);
  resolvedReferences.set(workspace, { at: workspace.version, crafts });
  return crafts;
}

export const referenceFiles = (workspace: Workspace): readonly SourceFile[] => [
  ...new Set(
    workspace
      .documents('build')
      .filter(({ document }) => kidOf(document.slot, 'reference') !== undefined)
      .map(({ file }) => file),
  ),
];

const resolvedReferences = new WeakMap<Workspace, { readonly at: number; readonly crafts: readonly Craft[] }>();

/** Another part tried in one place of the build, without touching the text. */
export interface Swap {
  /** JSON pointer of the part, such as `/parts/motors`. */
  readonly pointer: string;
  readonly id: string;
}

/** What could not be compared, said once, with the facts that would let most of it run. */
function factsMissing(craft: Craft, notChecked: readonly NotChecked[]): Finding {
  const missing = missingFacts(notChecked);
  const named = missing.slice(0, 4).map(({ fact, checks }) => `\`${fact}\` (${checks})`);
  const rest = missing.length - named.length;
  const many = notChecked.length === 1 ? '1 check' : `${notChecked.length} checks`;
  return {
    check: 'facts-missing',
    severity: 'information',
    message: `${many} could not run. What would let most of them run: ${named.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}. Add what you know; nothing was found there because nothing was compared.`,
    at: craft.where,
    related: [],
    fixes: [],
    fingerprint: fingerprintOf('facts-missing', craft.where),
  };
}

/** A rules profile that nobody compared with its sources for a year. */
function oldProfile(craft: Craft, today: string | undefined): readonly Finding[] {
  const region = regionFact(craft);
  const profile = profileFor(craft);
  if (!profile || !region || today === undefined || monthsBetween(profile.asOf, today) <= 12) return [];
  return [
    {
      check: 'rules-profile-old',
      severity: 'information',
      message: `The profile ${profile.name} was last compared with its sources in ${profile.asOf}, more than a year ago. Rules change; check your local rules.`,
      at: craft.where,
      related: [{ place: region.at, message: 'the region is said here' }],
      fixes: [],
      fingerprint: fingerprintOf('rules-profile-old', craft.where),
    },
  ];
}

const monthsBetween = (from: string, to: string): number => {
  const months = (date: string): number => Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7));
  return months(to) - months(from);
};

/** Names of checks in a settings file that no check has. */
function settingsFindings(file: SourceFile): readonly Finding[] {
  return file.documents.flatMap((document) => {
    if (document.kind !== 'settings') return [];
    return (kidOf(document.slot, 'severity')?.kids ?? []).flatMap((slot) => {
      if (isCheck(slot.key) || !slot.keySpan) return [];
      const near = nearest(
        slot.key,
        allChecks.map((check) => check.id),
      );
      const at = { ...placeOf({ slot, file: file.uri }), span: slot.keySpan };
      return [
        {
          check: 'check-unknown',
          severity: 'warning' as const,
          message: `There is no check \`${slot.key}\`.${near ? ` Did you mean \`${near}\`?` : ' Take this entry out.'}`,
          at,
          related: [],
          fixes: near
            ? [{ title: `Write \`${near}\``, edits: [{ file: file.uri, span: slot.keySpan, text: near }] }]
            : [],
          fingerprint: fingerprintOf('check-unknown', at),
        },
      ];
    });
  });
}

/** What a parts file says twice, or what another one says too. */
function libraryFindings(workspace: Workspace, file: SourceFile): readonly Finding[] {
  const found: Finding[] = [];
  for (const document of file.documents) {
    if (document.kind !== 'parts') continue;
    for (const slot of kidOf(document.slot, 'parts')?.kids ?? []) {
      const same = workspace.parts().get(slot.key) ?? [];
      const first = same.find((part) => folderOf(part.at.file) === folderOf(file.uri));
      if (!first || first.layer.slot === slot) continue;
      const at = placeOf({ slot, file: file.uri });
      found.push({
        check: 'part-defined-twice',
        severity: 'warning',
        message: `\`${slot.key}\` is defined twice in the parts files of this folder, and the other one is used. Rename one of them, or take one out.`,
        at,
        related: [{ place: first.at, message: 'this one is used' }],
        fixes: [],
        fingerprint: fingerprintOf('part-defined-twice', at),
      });
    }
  }
  return found;
}

function withSettings(finding: Finding, settings: SettingsFileFacts | undefined): Finding | undefined {
  const choice = settings?.severity?.entries.get(finding.check);
  // Danger can't be silenced by taste.
  if (!choice?.as || finding.danger) return finding;
  if (choice.as.value === 'off') return undefined;
  return { ...finding, severity: choice.as.value as Severity };
}

/** Gravest first; beyond the limit one line says how many more there are. */
function held(findings: readonly Finding[], file: SourceFile): readonly Finding[] {
  const sorted = [...findings].sort(bySeverity);
  if (sorted.length <= limits.findings) return sorted;
  const at = { file: file.uri, span: { start: 0, end: Math.min(6, file.text.length) }, path: '' };
  const rest = sorted.length - limits.findings;
  return [
    ...sorted.slice(0, limits.findings),
    {
      check: 'too-many-findings',
      severity: 'warning',
      message: `${rest} more findings are not shown. Mend the first ones; many of the others will go with them.`,
      at,
      related: [],
      fixes: [],
      fingerprint: 'too-many-findings',
    },
  ];
}
