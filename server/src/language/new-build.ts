/** A whole build for a class of craft, chosen part by part from a library so that the checks find nothing. Writes no file, and never calls clean what is not. */
import { analyse, referenceFiles } from '../analysis';
import type { Craft } from '../build/craft';
import { kidOf } from '../build/slot';
import { sampleLibrary } from '../library/generated/samples';
import { type LibraryPart, Workspace } from '../library/workspace';
import { enough } from '../plan/consensus';
import { type Standing, standings } from '../plan/consensus-craft';
import { weightOf } from '../plan/weight';
import { readers } from '../text/notation';
import { own } from '../text/own';
import { readQuantity } from '../text/quantity';
import { roleKinds } from '../vocabulary/generated/fields';
import { entryLines } from './entry-lines';
import { beginningOf, usualWish, type Wish } from './wish';

export interface NewBuild {
  readonly text: string;
  /** Errors and warnings that no choice of parts got rid of. */
  readonly left: readonly string[];
  readonly from: 'workspace' | 'samples';
}

/** Boards that fly and drive a craft, in the ways the trade sells them. */
const brains: readonly (readonly string[])[] = [['stack'], ['all-in-one'], ['flight-controller', 'esc']];

const needed = ['frame', 'propellers', 'motors'] as const;
const carried = ['camera', 'video-transmitter', 'video-antenna'] as const;
const carries: ReadonlySet<string> = new Set([...carried, 'capacitor', 'buzzer', 'receiver-antenna', 'receiver']);
/** Taken whenever the library has one that does no harm; a library need not have them. */
const usual = ['receiver', 'strap'] as const;
/** Taken where a finding asks for them. */
const useful = ['receiver-antenna', 'capacitor', 'buzzer'] as const;

/** Neither of these fits anything without the other. */
const couples = [
  ['motors', 'propellers'],
  ['video-transmitter', 'video-antenna'],
] as const;
/** Parts of each of a couple that are tried together. */
const paired = 6;

/** Parts tried in one place; a library of thousands is not gone through whole. */
const tried = 24;
const passes = 2;

/** @param uri where the file is going to be, which decides the bench and settings that count */
export function newBuild(workspace: Workspace, wish: Wish, uri: string, today?: string): NewBuild | undefined {
  return (
    chosen(copyOf(workspace), wish, uri, today, 'workspace') ??
    chosen(withSamples(copyOf(workspace), uri), wish, uri, today, 'samples')
  );
}

/** The parts for a file that says nothing but how a build begins; nothing when somebody has written on. */
export function filledBuild(workspace: Workspace, uri: string, craft: string, today?: string): NewBuild | undefined {
  const usual = usualWish[craft];
  const written = workspace.get(uri)?.text.replaceAll('\r', '').trim();
  if (!usual || written !== beginningOf(craft).trim()) return undefined;
  return newBuild(workspace, { craft, ...usual }, uri, today);
}

/** Trials must not be seen by anybody else. */
function copyOf(workspace: Workspace): Workspace {
  const copy = new Workspace();
  for (const kind of ['parts', 'bench', 'settings'] as const)
    for (const { file } of workspace.documents(kind)) copy.take(file);
  for (const file of referenceFiles(workspace)) copy.take(file);
  return copy;
}

const sampleScheme = 'samples:/';

function withSamples(workspace: Workspace, uri: string): Workspace {
  // Only the samples: the workspace's own parts were tried before and didn't make a build.
  for (const other of workspace.uris())
    if (other !== uri && workspace.get(other)?.documents.some(({ kind }) => kind === 'parts')) workspace.delete(other);
  for (const [name, text] of Object.entries(sampleLibrary)) workspace.set(`${sampleScheme}${name}`, text);
  return workspace;
}

type Choice = ReadonlyMap<string, LibraryPart>;

function chosen(
  workspace: Workspace,
  wish: Wish,
  uri: string,
  today: string | undefined,
  from: NewBuild['from'],
): NewBuild | undefined {
  const candidates = new Map<string, readonly LibraryPart[]>();
  const parts = [...workspace.parts().keys()].flatMap((id) => workspace.find(id, uri) ?? []);
  const of = (role: string): readonly LibraryPart[] => {
    const kind = role === 'pack' ? 'battery' : own(roleKinds, role);
    const known =
      candidates.get(role) ?? parts.filter((part) => part.kind === kind && suits(role, part, wish)).slice(0, tried);
    candidates.set(role, known);
    return known;
  };
  const score = (choice: Choice): { score: number; left: readonly string[] } => {
    workspace.set(uri, compose(choice, wish, 'workspace', workspace));
    const { findings = [], crafts = [] } = analyse(workspace, uri, { today }) ?? {};
    const left = findings.filter((finding) => finding.severity !== 'information');
    const points = findings.reduce(
      (sum, { severity }) => sum + (severity === 'error' ? 400 : severity === 'warning' ? 20 : 1),
      crafts[0] ? oddityOf(crafts[0]) : 0,
    );
    return {
      score: crafts.length === 0 ? Number.POSITIVE_INFINITY : points,
      left: left.map((finding) => finding.message),
    };
  };
  let best: { choice: Choice; score: number; left: readonly string[] } | undefined;
  for (const brain of brains) {
    const core = [...needed, 'pack', ...brain, ...carried];
    if (core.some((role) => of(role).length === 0)) continue;
    let choice: Choice = new Map(core.map((role) => [role, of(role)[0]!]));
    let now = score(choice);
    const improve = (role: string): void => {
      for (const part of of(role)) {
        if (choice.get(role) === part) continue;
        const trial = new Map(choice).set(role, part);
        const then = score(trial);
        if (then.score < now.score) [choice, now] = [trial, then];
      }
    };
    const improveBoth = ([first, second]: readonly [string, string]): void => {
      for (const one of of(first).slice(0, paired))
        for (const other of of(second).slice(0, paired)) {
          const trial = new Map(choice).set(first, one).set(second, other);
          const then = score(trial);
          if (then.score < now.score) [choice, now] = [trial, then];
        }
    };
    for (let pass = 0; pass < passes && now.score > 0; pass++) {
      const before = now.score;
      couples.forEach(improveBoth);
      core.forEach(improve);
      if (now.score === before || now.left.length === 0) break;
    }
    // What may be left out comes last, and only where it is not what is wrong: some boards have a receiver of their own.
    for (const role of [...usual, ...useful]) {
      const wanted = useful.includes(role as never) ? now.score : Number.POSITIVE_INFINITY;
      const trials = of(role).map((part) => {
        const trial = new Map(choice).set(role, part);
        return { trial, scored: score(trial) };
      });
      const good = trials
        .filter(({ scored }) => scored.left.length <= now.left.length && scored.score < wanted)
        .sort((one, two) => one.scored.score - two.scored.score)[0];
      if (good) [choice, now] = [good.trial, good.scored];
    }
    if (!best || now.left.length < best.left.length || (now.left.length === best.left.length && now.score < best.score))
      best = { choice, ...now };
    // Notes alone are no reason to try the other boards: somebody waits for this.
    if (best.left.length === 0) break;
  }
  // Where the workspace's parts make no sound build, the samples may.
  if (!best || (from === 'workspace' && best.left.length > 0)) return undefined;
  workspace.delete(uri);
  return { text: compose(best.choice, wish, from, workspace), left: best.left, from };
}

/** What the pack weighs in a craft ready to fly. Common practice. */
const packShare: Readonly<Record<string, number>> = { 'long-range-7': 0.45, 'lifter-10': 0.4 };
const usualPackShare = 0.3;

/**
 * Points by which parts that fit alike are told apart: what is carried shall be light, the pack as large as
 * the class flies it, and each value where the middle of the references has it.
 */
function oddityOf(craft: Craft): number {
  const { rows, packRow, ready } = weightOf(craft, craft.packs[0]);
  if (ready.value <= 0) return 0;
  const load = rows.reduce((sum, { part, mass }) => (carries.has(part) ? sum + mass.value : sum), 0) / ready.value;
  const pack = (packRow?.mass.value ?? 0) / ready.value;
  const wanted = packShare[craft.said.craft?.value ?? ''] ?? usualPackShare;
  return 40 * (load + Math.abs(pack - wanted)) + standings(craft).filter(isOffMiddle).length;
}

const isOffMiddle = ({ envelope, value, count }: Standing): boolean => {
  if (count < enough) return false;
  if (envelope.is === 'term') return envelope.shares[0]?.term !== value;
  const { middle } = envelope.spread;
  return middle !== undefined && typeof value === 'number' && (value < middle[0] || value > middle[1]);
};

/** What the wish itself decides; everything else is for the checks. */
function suits(role: string, part: LibraryPart, wish: Wish): boolean {
  const said = (key: string): string | undefined => {
    const node = kidOf(part.layer.slot, key)?.node;
    return node?.is === 'scalar' ? node.text : undefined;
  };
  if (role === 'pack') {
    const cells = readers['pack-cells'](said('cells') ?? '');
    return cells.ok && cells.value.series === wish.cells;
  }
  if (role === 'propellers') {
    const size = readers['propeller-size'](said('size') ?? '');
    return size.ok && Math.abs(size.value.diameter / 0.0254 - wish.propeller) < 0.06 * wish.propeller;
  }
  if (role === 'frame') {
    const largest = readQuantity(said('largest-propeller') ?? '', 'length');
    return !largest.ok || Math.abs(largest.value / 0.0254 - wish.propeller) < 0.15 * wish.propeller;
  }
  return true;
}

function compose(choice: Choice, wish: Wish, from: NewBuild['from'], workspace: Workspace): string {
  const lines = [...beginningOf(wish.craft).trimEnd().split('\n'), '', 'parts:'];
  const four = new Set(['motors', 'propellers']);
  for (const [role, part] of choice) {
    if (role === 'pack') continue;
    lines.push(`  ${role}:`, ...(from === 'samples' ? valuesOf(part, workspace) : [`    use: ${part.id}`]));
    if (four.has(role)) lines.push('    count: 4');
  }
  const pack = choice.get('pack');
  const plug = pack && kidOf(pack.layer.slot, 'plug')?.node;
  if (plug?.is === 'scalar')
    lines.push('  battery-lead:', `    plug: ${plug.text}`, `    wire: ${leadFor(plug.text)}`, '    length: 80 mm');
  lines.push(
    '',
    'packs:',
    '  main:',
    ...(pack ? (from === 'samples' ? valuesOf(pack, workspace) : [`    use: ${pack.id}`]) : []),
  );
  return `${lines.join('\n')}\n`;
}

/** The wire usually soldered to each plug. Common practice. */
function leadFor(plug: string): string {
  if (/^XT(?:90|150)|^AS150/.test(plug)) return '10 AWG';
  if (/^XT60/.test(plug)) return '12 AWG';
  return /^XT30/.test(plug) ? '16 AWG' : '20 AWG';
}

/** The part's lines in the library, moved to where a build has them, with what it takes over from the part it builds on. */
function valuesOf(part: LibraryPart, workspace: Workspace): readonly string[] {
  const said = new Set(['kind', 'use']);
  const lines: string[] = [];
  for (const { layer } of workspace.lineage(part)) {
    const file = workspace.get(layer.file);
    for (const kid of layer.slot.kids) {
      if (!file || !kid.keySpan || said.has(kid.key)) continue;
      said.add(kid.key);
      lines.push(...entryLines(file.text, kid, '    '));
    }
  }
  return lines;
}
