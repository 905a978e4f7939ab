/** Larger edits that a builder asks for: move a part to a parts file, write the library's values here, take another part that fits. Keeps comments, order and line ends. */
import { type CodeAction, CodeActionKind, type TextDocumentEdit, type TextEdit } from 'vscode-languageserver-types';
import { kidOf, type Slot } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import { idFrom } from '../library/seller-text/entry';
import { sharedFolders, type Workspace } from '../library/workspace';
import { indentOf, lineBreakOf } from '../text/lines';
import { own } from '../text/own';
import { textOf } from '../text/tree';
import { roleKinds } from '../vocabulary/generated/fields';
import { entryLines, wholeLines } from './entry-lines';
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
  const kind = first === 'packs' ? 'battery' : own(roleKinds, second);
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

const ofTheBuild = new Set(['use', 'kind', 'count', 'spares', 'at', 'owned', 'from', 'note']);

/** The library's values, each on a line of its own, in place of the `use:`; what the build says already stays. */
function writeHere(workspace: Workspace, files: Files, file: SourceFile, part: Slot, use: Slot): readonly CodeAction[] {
  const library = use.node.is === 'scalar' ? workspace.find(use.node.text, file.uri) : undefined;
  const source = library && workspace.get(library.layer.file);
  if (!library || !source || use.keySpan === undefined || library.layer.slot.kids.some((kid) => kid.key === 'use'))
    return [];
  const end = lineBreakOf(file.text);
  const indent = indentOf(file.text, use.keySpan.start);
  const said = new Set(part.kids.map((kid) => kid.key));
  const lines = library.layer.slot.kids.flatMap((kid) =>
    kid.key === 'kind' || said.has(kid.key) || !kid.keySpan || kid.node.via ? [] : entryLines(source.text, kid, indent),
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
    .filter((fit) => fit.judged && fit.misfit === undefined && fit.part.id !== now)
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
  const target = nearestParts(workspace, file.uri, kind);
  const moved = part.kids.filter((kid) => kid.keySpan && !ofTheBuild.has(kid.key) && !kid.node.via);
  if (!target || moved.length === 0) return [];
  const name = kidOf(part, 'name')?.node;
  const id = idFrom(name?.is === 'scalar' ? name.text : undefined, kind, (one) => workspace.parts().has(one));
  const end = lineBreakOf(target.file.text);
  const first = target.slot.kids[0];
  const base = first?.keySpan ? indentOf(target.file.text, first.keySpan.start) : '  ';
  const body = [
    `${base}${id}:`,
    `${base}  kind: ${kind}`,
    ...moved.flatMap((kid) => entryLines(file.text, kid, `${base}  `)),
  ].join(end);
  const last = target.file.text.length;
  const lead = /\n$/.test(target.file.text) || target.file.text === '' ? '' : end;
  const here: TextEdit[] = moved.map((kid) => ({
    range: rangeOf(file, wholeLines(file.text, { start: kid.keySpan!.start, end: kid.node.span.end })),
    newText: '',
  }));
  const indent = indentOf(file.text, moved[0]!.keySpan!.start);
  const top = wholeLines(file.text, { start: part.kids[0]!.keySpan!.start, end: part.kids[0]!.keySpan!.end }).start;
  here.unshift({
    range: rangeOf(file, { start: top, end: top }),
    newText: `${indent}use: ${id}${lineBreakOf(file.text)}`,
  });
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

/** The parts file that shares the most folders; among several one that has such parts, then the first by name. Its map of parts must be the last thing in it. */
export function nearestParts(
  workspace: Workspace,
  uri: string,
  kind: string,
): { file: SourceFile; slot: Slot } | undefined {
  const others = ({ slot }: { slot: Slot }): number =>
    Number(!slot.kids.some((part) => textOf(kidOf(part, 'kind')?.node) === kind));
  const candidates = workspace.documents('parts').flatMap(({ file, document }) => {
    const slot = kidOf(document.slot, 'parts');
    const tail =
      file.documents.at(-1) === document &&
      document.slot?.kids.at(-1) === slot &&
      slot?.node.is === 'map' &&
      !slot.node.flow;
    return tail && slot ? [{ file, slot }] : [];
  });
  return candidates.sort(
    (a, b) =>
      sharedFolders(b.file.uri, uri) - sharedFolders(a.file.uri, uri) ||
      others(a) - others(b) ||
      (a.file.uri < b.file.uri ? -1 : 1),
  )[0];
}
