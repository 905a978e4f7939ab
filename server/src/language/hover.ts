/** What is shown when the pointer rests on something: the card on a name, the figures of a part, the meaning of a field or a term. */
import type { Analysis } from '../analysis';
import type { Craft, Pack } from '../build/craft';
import { kidOf, type Slot } from '../build/slot';
import { allChecks } from '../checks/generated/all';
import type { Workspace } from '../library/workspace';
import { worked } from '../plan/worked';
import { cardOf, mainPack } from '../report/card';
import { cardAtAGlance, escapeMarkdown } from '../report/card-markdown';
import { harnessAsMarkdown, harnessReport } from '../report/harness-report';
import { lineGlance, orderGlance } from '../report/order-glance';
import { pictureAsMarkdown } from '../report/picture';
import { portRows, railRows } from '../report/ports-table';
import { stackPicture } from '../report/stack-picture';
import { tableAsMarkdown } from '../report/table';
import { thrustPicture } from '../report/thrust-picture';
import { splitOrigin } from '../text/origin';
import { own } from '../text/own';
import type { Span } from '../text/span';
import { type Field, spoken } from '../vocabulary/field';
import { roleKinds } from '../vocabulary/generated/fields';
import { type Located, locate, pathOf } from './locate';
import { partLines } from './part-lines';
import { partSummary } from './part-summary';
import { partStandings, valueStandings } from './standing-lines';
import { whatIfLines } from './what-if';

export interface HoverText {
  readonly span: Span;
  readonly markdown: string;
}

/** @param analysis of the file as it is now; nothing of it is worked out again here */
export function hover(
  workspace: Workspace,
  analysis: Analysis,
  offset: number,
  pictures = true,
): HoverText | undefined {
  const located = locate(analysis.file, offset);
  if (!located) return undefined;
  const { slot } = located;
  const span = located.on === 'key' && slot.keySpan ? slot.keySpan : (slot.node.via ?? slot.node.span);
  const path = pathOf(located);
  const markdown =
    located.document.kind === 'build'
      ? (buildHover(workspace, analysis, located, path, pictures) ??
        [fieldHover(located, path), ...valueLines(analysis, located, path)].filter(Boolean).join('\n\n'))
      : (libraryHover(workspace, located, path) ?? fieldHover(located, path));
  return markdown ? { span, markdown } : undefined;
}

function buildHover(
  workspace: Workspace,
  analysis: Analysis,
  located: Located,
  path: readonly string[],
  pictures: boolean,
): string | undefined {
  const role = path[0] === 'parts' ? path[1] : path[0] === 'packs' ? 'packs' : undefined;
  const atPart = path.length === 2 && located.on === 'key';
  const atUse = path.at(-1) === 'use';
  if (path.join() !== 'name' && !(role && (atPart || atUse))) return undefined;
  const craft = craftAt(analysis, located);
  if (!craft) return undefined;
  const card = cardOf(craft, analysis);
  if (path.join() === 'name') return cardAtAGlance(card);
  const pack = role === 'packs' ? craft.packs.find((one) => one.name === path[1]) : mainPack(craft);
  const lines = [
    ...partLines(craft, card, role!, pack),
    ...partStandings(craft, atPart ? located.slot : located.parents.at(-1)!),
  ];
  const head = partHead(workspace, craft, located, role!);
  const picture = pictures ? pictureOf(craft, role!, pack) : '';
  return [head, lines.join('\n'), picture, ...workedOut(craft, role!)].filter(Boolean).join('\n\n') || undefined;
}

/** What the craft as a whole makes of one value: where it lies among references, what one step up and down would change, what is ordered. */
function valueLines(analysis: Analysis, { slot, ...located }: Located, path: readonly string[]): readonly string[] {
  const craft = craftAt(analysis, located);
  if (!craft) return [];
  if (path.join() === 'budget') return [orderGlance(craft).join('\n\n')];
  if (located.on === 'key') return [];
  if (path.at(-1) === 'from') return lineGlance(craft, path.at(-2)!);
  const steps = ['parts', 'packs', 'flight'].includes(path[0] ?? '') ? whatIfLines(craft, path) : [];
  return [
    ...valueStandings(craft, slot),
    ...(steps.length > 0 ? [`_One step down or up_\n\n${steps.join('\n')}`] : []),
  ];
}

const craftAt = (analysis: Analysis, located: Pick<Located, 'document'>): Craft | undefined =>
  analysis.crafts.find((one) => isIn(located, one));

const isIn = ({ document: { span } }: Pick<Located, 'document'>, craft: Craft): boolean =>
  craft.where.span.start >= span.start && craft.where.span.start <= span.end;

/** A drawing, where it says more than words. */
function pictureOf(craft: Craft, role: string, pack: Pack | undefined): string {
  const thrust = role === 'motors' || role === 'propellers';
  const stack =
    role === 'frame' || role === 'stack' || role === 'flight-controller' || role === 'esc' || role === 'all-in-one';
  const picture = thrust ? thrustPicture(craft, pack) : stack ? stackPicture(craft) : undefined;
  return picture ? pictureAsMarkdown(picture) : '';
}

/** Tables of what was worked out, where the part is the one they belong to. */
function workedOut(craft: Craft, role: string): readonly string[] {
  const boards = ['flight-controller', 'stack', 'all-in-one'];
  if (role === 'harness' || (role === 'esc' && !craft.roles.harness)) {
    const harness = worked(craft, undefined, 'worked.harness');
    return harness ? [harnessAsMarkdown(harnessReport(harness.value))] : [];
  }
  if (!boards.includes(role)) return [];
  const ports = worked(craft, undefined, 'worked.ports')?.value;
  const rails = worked(craft, undefined, 'worked.rails')?.value;
  return [
    ports ? `**Serial ports**\n\n${tableAsMarkdown(portRows(ports))}` : '',
    rails ? `**Rails**\n\n${tableAsMarkdown(railRows(rails))}` : '',
  ];
}

/** The part's name with its decisive values. */
function partHead(workspace: Workspace, craft: Craft, located: Located, role: string): string {
  const slot = located.on === 'key' && located.slot.key !== 'use' ? located.slot : located.parents.at(-1)!;
  const use = kidOf(slot, 'use')?.node;
  const id = use?.is === 'scalar' ? use.text : undefined;
  const library = id === undefined ? undefined : workspace.find(id, craft.file);
  const kind = role === 'packs' ? 'battery' : (own(roleKinds, role) ?? role);
  const title = `**${spoken(slot.key)}**${id ? `: ${escapeMarkdown(id)}` : ''}`;
  const lineage = library ? workspace.lineage(library).map(({ layer }) => layer.slot) : [];
  const values = partSummary([slot, ...lineage], 12).map(escapeMarkdown);
  const description = slot.field?.about.description ?? spoken(kind);
  return [title, values.length > 0 ? values.join(' · ') : '', `_${description}_`].filter(Boolean).join('\n\n');
}

function libraryHover(workspace: Workspace, located: Located, path: readonly string[]): string | undefined {
  if (located.document.kind !== 'parts' || path[0] !== 'parts' || path.length !== 2 || located.on !== 'key')
    return undefined;
  const id = path[1]!;
  const users = usersOf(workspace, id);
  const part = workspace
    .parts()
    .get(id)
    ?.find(({ layer }) => layer.slot === located.slot);
  const values = part ? partSummary(workspace.lineage(part).map(({ layer }) => layer.slot)).map(escapeMarkdown) : [];
  const used =
    users.length === 0 ? 'No build of this workspace uses it.' : `Used by ${users.map(escapeMarkdown).join(', ')}.`;
  return [`**${escapeMarkdown(id)}**`, values.join(' · '), used].filter(Boolean).join('\n\n');
}

/** Names of the builds that use a part. */
export function usersOf(workspace: Workspace, id: string): readonly string[] {
  return workspace.documents('build').flatMap(({ document }) => {
    const uses = (slot: Slot): boolean =>
      slot.kids.some((kid) => (kid.key === 'use' && kid.node.is === 'scalar' && kid.node.text === id) || uses(kid));
    const name = kidOf(document.slot, 'name')?.node;
    return document.slot && uses(document.slot) ? [name?.is === 'scalar' ? name.text : 'an unnamed build'] : [];
  });
}

function fieldHover(located: Located, path: readonly string[]): string | undefined {
  const { slot } = located;
  const { field } = slot;
  if (!field) return undefined;
  const parts = [`**${spoken(slot.key)}**`, field.about.description];
  if (field.is === 'term' && slot.node.is === 'scalar') {
    const said = splitOrigin(slot.node.text).said;
    const term = field.terms.find((one) => one.term === said);
    if (term?.explained)
      parts.splice(
        0,
        parts.length,
        `**${escapeMarkdown(said)}**: ${term.explained}`,
        `_${spoken(slot.key)}: ${field.about.description}_`,
      );
  }
  parts.push(...usualLines(field), ...usedByChecks(path));
  return parts.filter(Boolean).join('\n\n');
}

function usualLines(field: Field): string[] {
  const lines: string[] = [];
  const { usual, examples, source } = field.about;
  if (examples?.[0]) lines.push(`Written as in \`${examples[0]}\`.`);
  if (usual) lines.push(`Usually ${usual[0]} to ${usual[1]}.`);
  if (source) lines.push(`Source: ${source}.`);
  return lines;
}

function usedByChecks(path: readonly string[]): string[] {
  const wanted =
    path[0] === 'parts'
      ? path.slice(1).join('.')
      : path[0] === 'packs'
        ? `pack.${path.slice(2).join('.')}`
        : path.join('.');
  const names = titlesByFact.get(wanted) ?? [];
  return names.length === 0
    ? []
    : [
        `Compared by ${names.length} ${names.length === 1 ? 'check' : 'checks'}: ${names.slice(0, 5).join('; ')}${names.length > 5 ? '; …' : ''}.`,
      ];
}

/** Which checks look at a fact. */
const titlesByFact: ReadonlyMap<string, readonly string[]> = allChecks.reduce((titles, check) => {
  for (const fact of new Set([...Object.values(check.needs), ...Object.values(check.may)]))
    titles.set(fact, [...(titles.get(fact) ?? []), check.title.toLowerCase()]);
  return titles;
}, new Map<string, readonly string[]>());
