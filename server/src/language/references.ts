/** Where a part is named, parts and builds by name for a search, and what belongs together under the cursor. */
import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type DocumentLink,
  type Location,
  SymbolKind,
  type WorkspaceSymbol,
} from 'vscode-languageserver-types';
import type { Analysis } from '../analysis';
import { kidOf, type Slot } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import type { Span } from '../text/span';
import { mentionAt, mentions, mentionsIn } from './mentions';
import { type Files, locationOf, rangeOf } from './protocol';

export function references(
  workspace: Workspace,
  files: Files,
  uri: string,
  offset: number,
  withDefinition: boolean,
): readonly Location[] {
  const file = workspace.get(uri);
  const mention = file && mentionAt(file, offset);
  if (!mention) return [];
  return mentions(workspace, mention.id)
    .filter((one) => withDefinition || one.as !== 'definition')
    .map((one) => ({ uri: files.spelled(one.file.uri), range: rangeOf(one.file, one.span) }));
}

const most = 200;

export function workspaceSymbols(workspace: Workspace, files: Files, query: string): readonly WorkspaceSymbol[] {
  const wanted = query.toLowerCase();
  const found: WorkspaceSymbol[] = [];
  for (const { file, document } of workspace.documents('build')) {
    const name = kidOf(document.slot, 'name');
    if (found.length < most && name?.node.is === 'scalar' && name.node.text.toLowerCase().includes(wanted))
      found.push({
        name: name.node.text,
        kind: SymbolKind.Module,
        location: { uri: files.spelled(file.uri), range: rangeOf(file, name.node.span) },
        containerName: 'build',
      });
  }
  for (const [id, [part]] of workspace.parts()) {
    if (found.length >= most) break;
    if (part && id.toLowerCase().includes(wanted))
      found.push({
        name: id,
        kind: SymbolKind.Object,
        location: locationOf(files, part.at),
        containerName: part.kind.replaceAll('-', ' '),
      });
  }
  return found;
}

/** The two sides of a finding, or all places in this file that name the same part. */
export function highlights(workspace: Workspace, analysis: Analysis, offset: number): readonly DocumentHighlight[] {
  const { file } = analysis;
  const inside = (span: Span): boolean => span.start <= offset && offset <= span.end;
  const sides = analysis.findings.flatMap((finding) => {
    const spans = [finding.at, ...finding.related.map((related) => related.place)]
      .filter((place) => place.file === file.uri)
      .map((place) => place.span);
    return spans.length > 1 && spans.some(inside) ? spans : [];
  });
  const mention = mentionAt(file, offset);
  const same =
    mention && workspace.find(mention.id, file.uri) ? mentionsIn(file).filter((one) => one.id === mention.id) : [];
  const spans = new Map([...sides, ...same.map((one) => one.span)].map((span) => [span.start, span]));
  return [...spans.values()].map((span) => ({ range: rangeOf(file, span), kind: DocumentHighlightKind.Read }));
}

/** Addresses in free texts, and each `use:` to the part it names. */
export function links(workspace: Workspace, files: Files, file: SourceFile): readonly DocumentLink[] {
  const found: DocumentLink[] = [];
  for (const mention of mentionsIn(file)) {
    const part = mention.as === 'definition' ? undefined : workspace.find(mention.id, file.uri);
    if (!part) continue;
    const { uri, range } = locationOf(files, part.at);
    found.push({
      range: rangeOf(file, mention.span),
      target: `${uri}#L${range.start.line + 1}`,
      tooltip: `to ${mention.id}`,
    });
  }
  const walk = (slot: Slot): void => {
    if (slot.field?.is === 'text' && slot.node.is === 'scalar')
      for (const match of slot.node.text.matchAll(/https?:\/\/[^\s<>"')]+/g)) {
        const start = file.text.indexOf(match[0], slot.node.span.start);
        if (start >= 0) found.push({ range: rangeOf(file, { start, end: start + match[0].length }), target: match[0] });
      }
    for (const kid of slot.kids) walk(kid);
  };
  for (const document of file.documents) if (document.slot) walk(document.slot);
  return found;
}
