/** Larger edits that a builder asks for: move a part to a parts file, write the library's values here, take another part that fits. Keeps comments, order and line ends. */
import { type CodeAction, CodeActionKind, type TextDocumentEdit, type TextEdit } from 'vscode-languageserver-types';
import { kidOf, type Slot } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import type { Span } from '../text/span';
import { roleKinds } from '../vocabulary/generated/fields';
import { fitting } from './fit';
import { locate, pathOf } from './locate';
import { type Files, rangeOf } from './protocol';

export function refactorings(workspace: Workspace, files: Files, uri: string, offset: number): readonly CodeAction[] {
  const file = workspace.get(uri);
  const located = file && locate(file, offset);
  if (!file || located?.document.kind !== 'build') return [];
  const path = pathOf(located);
  const [first, second] = path;
  if (second === undefined || (first !== 'parts' && first !== 'packs')) return [];
  const kind = first === 'packs' ? 'battery' : roleKinds[second as keyof typeof roleKinds];
  const part = kidOf(kidOf(located.document.slot, first), second);
  if (
    !kind ||
    !part?.keySpan ||
    part.node.is !== 'map' ||
    part.node.flow ||
    part.node.via ||
    second === 'adapters' ||
    second === 'fasteners' ||
    second === 'extras'
  )
    return [];
  const use = kidOf(part, 'use');
  return use?.node.is === 'scalar'
    ? [...writeHere(workspace, files, file, part, use), ...replaceBy(workspace, files, file, part, use, kind)]
    : moveOut(workspace, files, file, part, kind);
}

const own = new Set(['use', 'kind', 'count', 'spares', 'at', 'owned', 'from', 'note']);

/** The library's values, each on a line of its own, in place of the `use:`; what the build says already stays. */
function writeHere(workspace: Workspace, files: Files, file: SourceFile, part: Slot, use: Slot): readonly CodeAction[] {
  const library = use.node.is === 'scalar' ? workspace.find(use.node.text, file.uri) : undefined;
  const source = library && workspace.get(library.layer.file);
  if (!library || !source || use.keySpan === undefined || library.layer.slot.kids.some((kid) => kid.key === 'use'))
    return [];
  const end = lineEnd(file.text);
  const indent = indentOf(file.text, use.keySpan.start);
  const said = new Set(part.kids.map((kid) => kid.key));
  const lines = library.layer.slot.kids.flatMap((kid) =>
    kid.key === 'kind' || said.has(kid.key) || !kid.keySpan || kid.node.via
      ? []
      : [blockOf(source.text, kid, indent, end)],
  );
  const line = wholeLines(file.text, { start: use.keySpan.start, end: use.node.span.end });
  const edit: TextEdit = { range: rangeOf(file, line), newText: lines.length > 0 ? `${lines.join(end)}${end}` : '' };
  return [
    {
      title: `Write the values of ${library.id} here`,
      kind: CodeActionKind.RefactorInline,
      edit: { changes: { [files.spelled(file.uri)]: [edit] } },
    },
  ];
}

function replaceBy(
  workspace: Workspace,
  files: Files,
  file: SourceFile,
  part: Slot,
  use: Slot,
  kind: string,
): readonly CodeAction[] {
  const now = use.node.is === 'scalar' ? use.node.text : '';
  return fitting(workspace, { uri: file.uri, pointer: part.pointer, kind })
    .filter((fit) => fit.misfit === undefined && fit.part.id !== now)
    .slice(0, 8)
    .map((fit) => ({
      title: `Replace by ${fit.part.id}, which fits`,
      kind: CodeActionKind.RefactorRewrite,
      edit: { changes: { [files.spelled(file.uri)]: [{ range: rangeOf(file, use.node.span), newText: fit.part.id }] } },
    }));
}

/** The part's own values go behind the last part of the nearest parts file; count, place and the like stay. */
function moveOut(
  workspace: Workspace,
  files: Files,
  file: SourceFile,
  part: Slot,
  kind: string,
): readonly CodeAction[] {
  const target = nearestParts(workspace, file.uri);
  const moved = part.kids.filter((kid) => kid.keySpan && !own.has(kid.key) && !kid.node.via);
  if (!target || moved.length === 0) return [];
  const id = freeId(workspace, part, kind);
  const end = lineEnd(target.file.text);
  const first = target.slot.kids[0];
  const base = first?.keySpan ? indentOf(target.file.text, first.keySpan.start) : '  ';
  const body = [
    `${base}${id}:`,
    `${base}  kind: ${kind}`,
    ...moved.map((kid) => blockOf(file.text, kid, `${base}  `, end)),
  ].join(end);
  const last = target.file.text.length;
  const lead = /\n$/.test(target.file.text) || target.file.text === '' ? '' : end;
  const here: TextEdit[] = moved.map((kid) => ({
    range: rangeOf(file, wholeLines(file.text, { start: kid.keySpan!.start, end: kid.node.span.end })),
    newText: '',
  }));
  const indent = indentOf(file.text, moved[0]!.keySpan!.start);
  const top = wholeLines(file.text, { start: part.kids[0]!.keySpan!.start, end: part.kids[0]!.keySpan!.end }).start;
  here.unshift({ range: rangeOf(file, { start: top, end: top }), newText: `${indent}use: ${id}${lineEnd(file.text)}` });
  const edits: TextDocumentEdit[] = [
    { textDocument: { uri: files.spelled(file.uri), version: null }, edits: here },
    {
      textDocument: { uri: files.spelled(target.file.uri), version: null },
      edits: [{ range: rangeOf(target.file, { start: last, end: last }), newText: `${lead}${end}${body}${end}` }],
    },
  ];
  return [
    {
      title: `Move this ${kind.replaceAll('-', ' ')} to ${target.file.uri.split('/').at(-1)}`,
      kind: CodeActionKind.RefactorExtract,
      edit: { documentChanges: edits },
    },
  ];
}

/** The parts file that shares the most folders, the first by name among several; its map of parts must be the last thing in it. */
export function nearestParts(workspace: Workspace, uri: string): { file: SourceFile; slot: Slot } | undefined {
  const shared = (other: string): number => {
    const [a, b] = [uri.split('/').slice(0, -1), other.split('/').slice(0, -1)];
    let n = 0;
    while (n < a.length && a[n] === b[n]) n++;
    return n;
  };
  const candidates = workspace.documents('parts').flatMap(({ file, document }) => {
    const slot = kidOf(document.slot, 'parts');
    const tail =
      file.documents.at(-1) === document &&
      document.slot?.kids.at(-1) === slot &&
      slot?.node.is === 'map' &&
      !slot.node.flow;
    return tail && slot ? [{ file, slot }] : [];
  });
  return candidates.sort((a, b) => shared(b.file.uri) - shared(a.file.uri) || (a.file.uri < b.file.uri ? -1 : 1))[0];
}

function freeId(workspace: Workspace, part: Slot, kind: string): string {
  const name = kidOf(part, 'name')?.node;
  const base =
    (name?.is === 'scalar' ? name.text : `my-${kind}`)
      .toLowerCase()
      .replace(/[^a-z0-9.]+/g, '-')
      .replace(/^-+|-+$/g, '') || `my-${kind}`;
  for (let n = 1; ; n++) {
    const id = n === 1 ? base : `${base}-${n}`;
    if (!workspace.parts().has(id)) return id;
  }
}

export const lineEnd = (text: string): string => (/\r\n/.test(text) ? '\r\n' : '\n');

export function indentOf(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  return text.slice(start, offset);
}

/** From the start of the first line to behind the end of the last, with a comment that stands behind the value. */
function wholeLines(text: string, span: Span): Span {
  const start = text.lastIndexOf('\n', span.start - 1) + 1;
  let last = span.end;
  while (last > span.start && /\s/.test(text[last - 1]!)) last--;
  const next = text.indexOf('\n', last);
  return { start, end: next === -1 ? text.length : next + 1 };
}

/** The lines of an entry as they are written, moved to another indentation. */
function blockOf(text: string, slot: Slot, indent: string, end: string): string {
  const span = wholeLines(text, { start: slot.keySpan!.start, end: Math.max(slot.node.span.end, slot.keySpan!.end) });
  const before = indentOf(text, slot.keySpan!.start).length;
  return text
    .slice(span.start, span.end)
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((line) =>
      line.trim() === '' ? '' : indent + line.slice(Math.min(before, line.length - line.trimStart().length)),
    )
    .join(end);
}
