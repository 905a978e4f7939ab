/** What may be written where the cursor stands: keys, trade terms, part ids, each explained. Proposes; changes nothing. */
import {
  type Command,
  type CompletionItem,
  CompletionItemKind,
  InsertTextFormat,
  MarkupKind,
} from 'vscode-languageserver-types';
import { craftsOf } from '../analysis';
import { kidOf } from '../build/slot';
import { allChecks } from '../checks/generated/all';
import type { LibraryPart, Workspace } from '../library/workspace';
import { escapeMarkdown } from '../report/card-markdown';
import { own } from '../text/own';
import { fieldOf, fileKinds, fileKindWords, isFileKind } from '../vocabulary';
import { type Field, isLeaf, type LeafField, type MapField, spoken } from '../vocabulary/field';
import { roleKinds } from '../vocabulary/generated/fields';
import { changeWords } from './change-words';
import { type Cursor, cursorAt } from './cursor';
import { familyWords } from './families';
import { craftWith, fitting, mostListed, type PartPlace } from './fit';
import { partSummary } from './part-summary';
import { rangeOf } from './protocol';
import { beginningOf, fillBuild, usualWish } from './wish';

export function complete(workspace: Workspace, uri: string, offset: number): readonly CompletionItem[] {
  const file = workspace.get(uri);
  if (!file) return [];
  const cursor = cursorAt(file.text, offset);
  const range = rangeOf(file, cursor.word);
  const proposals =
    file.text.trim() === ''
      ? [...kindLines(), ...wholeBuilds(uri)]
      : cursor.at === 'key'
        ? keys(file.text, offset, cursor)
        : values(workspace, uri, file.text, offset, cursor);
  return proposals.slice(0, mostListed).map((proposal, i) => ({
    label: proposal.label,
    kind: proposal.kind,
    // The short words stand beside the label of every row; the panel of the chosen row shows the long ones.
    labelDetails: proposal.detail ? { description: proposal.detail } : undefined,
    documentation: proposal.documentation ? { kind: MarkupKind.Markdown, value: proposal.documentation } : undefined,
    insertTextFormat: proposal.snippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    textEdit: { range, newText: `${cursor.needsBlank ? ' ' : ''}${proposal.text}` },
    filterText: proposal.label,
    sortText: String(i).padStart(4, '0'),
    data: proposal.data,
    command: proposal.askAgain ? { title: 'Suggest', command: 'editor.action.triggerSuggest' } : proposal.follow,
  }));
}

interface Proposal {
  readonly label: string;
  readonly text: string;
  readonly kind: CompletionItemKind;
  readonly detail?: string;
  readonly documentation?: string;
  readonly snippet?: boolean;
  readonly askAgain?: boolean;
  readonly follow?: Command;
  readonly data?: SwapData;
}

/** For a file that says nothing yet: a build of each class. Its parts are chosen once it is taken, which lasts most of a second. */
const wholeBuilds = (uri: string): readonly Proposal[] =>
  Object.entries(usualWish).map(([craft, { cells, propeller }]) => ({
    label: `a whole build: ${craft}`,
    text: beginningOf(craft),
    kind: CompletionItemKind.Snippet,
    detail: `${cells}S, ${propeller} in`,
    documentation: `A build with every part that a craft flies with: ${cells}S, ${propeller} inch propellers. Its parts are chosen from this workspace where they fit, and from the samples otherwise, once you take this.`,
    follow: { title: 'Choose the parts', command: fillBuild, arguments: [uri, craft] },
  }));

/** What kind of file this is by its own first key, in the document around the cursor. */
function rootAt(text: string, offset: number): MapField | undefined {
  const start = Math.max(0, text.lastIndexOf('\n---', offset - 1));
  const kind = /^dryfit:[ \t]*([\w-]+)/m.exec(text.slice(start))?.[1];
  return isFileKind(kind) ? fieldOf[kind] : undefined;
}

/** The field of a map by the keys that lead to it. */
function fieldAtPath(root: MapField | undefined, cursor: Cursor): Field | undefined {
  let field: Field | undefined = root;
  for (const [i, key] of cursor.path.entries()) field = fieldOfKey(inner(field, cursor.kinds[i]), key);
  const last = inner(field, cursor.kinds[cursor.path.length]);
  return last ?? field;
}

/** The map that is meant inside a list, or by the kind that is said. */
function inner(field: Field | undefined, kind: string | undefined): Field | undefined {
  if (field?.is === 'list') return inner(field.of, kind);
  if (field?.is === 'by-kind') return kindAt(field.kinds, kind);
  return field;
}

function fieldOfKey(field: Field | undefined, key: string): Field | undefined {
  if (field?.is === 'map') return Object.hasOwn(field.fields, key) ? field.fields[key] : undefined;
  return field?.is === 'table' ? field.of : undefined;
}

const kindAt = (kinds: Readonly<Record<string, MapField>>, kind: string | undefined): MapField | undefined =>
  kind !== undefined && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;

function keys(text: string, offset: number, cursor: Cursor): readonly Proposal[] {
  const root = rootAt(text, offset);
  if (!root) return cursor.path.length === 0 && !cursor.flow ? kindLines() : [];
  const field = fieldAtPath(root, cursor);
  if (field?.is === 'map')
    return Object.entries(field.fields).flatMap(([key, kid]) =>
      cursor.siblings.has(key) ? [] : [keyProposal(key, kid, cursor)],
    );
  if (field?.is === 'by-kind') return [keyProposal('kind', field.kinds.motor!.fields.kind!, cursor)];
  if (field?.is === 'table')
    return (field.keys ?? [field.keyExample]).flatMap((key) =>
      cursor.siblings.has(key) ? [] : [keyProposal(key, field.of, cursor)],
    );
  return [];
}

const kindLines = (): readonly Proposal[] =>
  fileKinds.map((kind) => ({
    label: `dryfit: ${kind}`,
    text: kind === 'build' ? 'dryfit: build\nname: $1\ncraft: $0' : `dryfit: ${kind}\n$0`,
    snippet: true,
    kind: CompletionItemKind.Snippet,
    detail: fileKindWords[kind],
    askAgain: kind === 'build',
  }));

function keyProposal(key: string, field: Field, cursor: Cursor): Proposal {
  const example = field.about.examples?.[0];
  const usual = field.about.usual ? `\n\nUsually ${field.about.usual[0]} to ${field.about.usual[1]}.` : '';
  const documentation = `${field.about.description}${example ? `\n\nWritten as in \`${example}\`.` : ''}${usual}`;
  const inner = isLeaf(field) || field.is === 'list' || cursor.flow;
  // The editor indents the lines of a snippet like the line it is put on.
  return {
    label: key,
    text: inner ? `${key}: ` : `${key}:\n  `,
    kind: isLeaf(field) ? CompletionItemKind.Property : CompletionItemKind.Module,
    detail: isLeaf(field) ? example : undefined,
    documentation,
    snippet: false,
    askAgain: true,
  };
}

function values(workspace: Workspace, uri: string, text: string, offset: number, cursor: Cursor): readonly Proposal[] {
  if (cursor.key === 'dryfit' && cursor.path.length === 0)
    return fileKinds.map((kind) => ({
      label: kind,
      text: kind,
      kind: CompletionItemKind.EnumMember,
      detail: fileKindWords[kind],
    }));
  const map = fieldAtPath(rootAt(text, offset), cursor);
  let field: Field | undefined;
  if (map?.is === 'map') field = Object.hasOwn(map.fields, cursor.key!) ? map.fields[cursor.key!] : undefined;
  else if (map?.is === 'table') field = map.of;
  else if (map?.is === 'by-kind' && cursor.key === 'kind') field = map.kinds.motor!.fields.kind;
  if (field?.is === 'list') field = field.of;
  if (!field || !isLeaf(field)) return [];
  return leafValues(workspace, uri, cursor, field);
}

function leafValues(workspace: Workspace, uri: string, cursor: Cursor, field: LeafField): readonly Proposal[] {
  if (field.is === 'term')
    return field.terms.map(({ term, explained }) => ({
      label: term,
      text: term,
      kind: CompletionItemKind.EnumMember,
      detail: explained,
      documentation: explained || undefined,
    }));
  if (field.is === 'text') return textValues(workspace, uri, cursor, field);
  if (field.is === 'notation' && field.notation === 'flag')
    return ['yes', 'no'].map((word) => ({
      label: word,
      text: word,
      kind: CompletionItemKind.EnumMember,
      detail: field.about.description,
    }));
  if (field.is === 'notation' && field.notation === 'rail')
    return ['battery', '5V', '9V', '3.3V', 'video-transmitter 5V'].map((word) => ({
      label: word,
      text: word,
      kind: CompletionItemKind.EnumMember,
      detail: field.about.description,
    }));
  if (field.is === 'notation' && field.notation === 'serial-port')
    return [1, 2, 3, 4, 5, 6, 7, 8].map((n) => ({
      label: `uart${n}`,
      text: `uart${n}`,
      kind: CompletionItemKind.EnumMember,
      detail: field.about.description,
    }));
  return (field.about.examples ?? []).map((example) => ({
    label: example,
    text: example,
    kind: CompletionItemKind.Value,
    detail: `as an example: ${field.about.description.toLowerCase()}`,
  }));
}

function textValues(
  workspace: Workspace,
  uri: string,
  cursor: Cursor,
  field: LeafField & { is: 'text' },
): readonly Proposal[] {
  if (field.reference === 'part') return partIds(workspace, uri, cursor);
  if (field.reference === 'check')
    return allChecks.map((check) => ({
      label: check.id,
      text: check.id,
      kind: CompletionItemKind.Reference,
      detail: check.title,
    }));
  if (field.reference === 'role')
    return Object.keys(roleKinds).map((role) => ({
      label: role,
      text: role,
      kind: CompletionItemKind.Reference,
      detail: buildRole(role),
    }));
  if (field.reference === 'pack') return packNames(workspace, uri);
  if (field.family)
    return familyWords(workspace, field.family).map(({ word, seen }) => ({
      label: word,
      text: word,
      kind: CompletionItemKind.Value,
      detail: `${field.family}, said ${seen} ${seen === 1 ? 'time' : 'times'} in this workspace`,
    }));
  return [];
}

const buildRole = (role: string): string => {
  const { parts } = fieldOf.build.fields;
  return parts?.is === 'map' ? (parts.fields[role]?.about.description ?? '') : '';
};

function packNames(workspace: Workspace, uri: string): readonly Proposal[] {
  const slots = workspace.get(uri)?.documents.flatMap((document) => kidOf(document.slot, 'packs')?.kids ?? []) ?? [];
  return slots.map((slot) => ({
    label: slot.key,
    text: slot.key,
    kind: CompletionItemKind.Reference,
    detail: partSummary([slot], 3).join(', ') || 'a pack of this build',
  }));
}

function wantedKind(cursor: Cursor): string | undefined {
  const [first, second] = cursor.path;
  if (first === 'packs') return 'battery';
  const last = cursor.path.at(-1) ?? '';
  return (
    (cursor.path.length > 2 ? own(roleKinds, last) : undefined) ??
    (first === 'parts' && second ? own(roleKinds, second) : undefined) ??
    cursor.kinds.at(-1)
  );
}

function partIds(workspace: Workspace, uri: string, cursor: Cursor): readonly Proposal[] {
  const kind = wantedKind(cursor);
  const place = placeOf(uri, cursor, kind);
  if (place)
    return fitting(workspace, place, cursor).map(({ part, misfit }) => {
      const why = misfit && `does not fit: ${firstSentence(misfit.message)}`;
      return partProposal(workspace, part, why, { place, id: part.id });
    });
  return [...workspace.parts().keys()].flatMap((id) => {
    const part = workspace.find(id, uri);
    return part && (kind === undefined || part.kind === kind)
      ? [partProposal(workspace, part, undefined, undefined)]
      : [];
  });
}

function partProposal(
  workspace: Workspace,
  part: LibraryPart,
  why: string | undefined,
  swap: SwapData | undefined,
): Proposal {
  const values = partSummary(
    workspace.lineage(part).map(({ layer }) => layer.slot),
    6,
  );
  return {
    label: part.id,
    text: part.id,
    kind: CompletionItemKind.Reference,
    detail: why ?? values.slice(0, 3).join(', '),
    documentation: [
      `**${spoken(part.kind)}** ${part.id}`,
      values.map(escapeMarkdown).join(' · '),
      why ? `It ${why}` : '',
    ]
      .filter(Boolean)
      .join('\n\n'),
    data: swap,
  };
}

/** Where in a build a part is chosen; nothing inside a board or a parts file. */
function placeOf(uri: string, cursor: Cursor, kind: string | undefined): PartPlace | undefined {
  const [first, second, ...deeper] = cursor.path;
  if (kind === undefined || second === undefined || deeper.length > 0 || (first !== 'parts' && first !== 'packs'))
    return undefined;
  if (cursor.kinds.at(-1) !== undefined) return undefined;
  return { uri, pointer: `/${first}/${second}`, kind };
}

const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;

/** What a completion item carries for the moment it is looked at. */
export interface SwapData {
  readonly place: PartPlace;
  readonly id: string;
}

/** The same item with what choosing it would change. */
export function resolveItem(workspace: Workspace, item: CompletionItem): CompletionItem {
  const data = item.data as SwapData | undefined;
  const file = data && workspace.get(data.place.uri);
  const then = data && file && craftWith(workspace, data.place, data.id);
  if (!data || !file || !then) return item;
  const words = changeWords(craftsOf(workspace, file)[0], then);
  const before = typeof item.documentation === 'object' ? item.documentation.value : (item.documentation ?? '');
  return words
    ? { ...item, documentation: { kind: MarkupKind.Markdown, value: `${before}\n\nWith it: ${words}` } }
    : item;
}
