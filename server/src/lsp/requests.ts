/** Answers what an editor asks about an open text, each from one language feature. Keeps no state. */
import { type Connection, LSPErrorCodes, MarkupKind, ResponseError } from 'vscode-languageserver';
import { actions } from '../language/actions';
import { codeLenses } from '../language/code-lens';
import { complete, resolveItem } from '../language/completion';
import { definition } from '../language/definition';
import { mostListed } from '../language/fit';
import { hover } from '../language/hover';
import { inlayHints } from '../language/inlay-hints';
import { rangeOf } from '../language/protocol';
import { folding, selection } from '../language/ranges';
import { refactorings } from '../language/refactor';
import { highlights, links, references, workspaceSymbols } from '../language/references';
import { CannotRename, nameAt, rename } from '../language/rename';
import { semanticTokens } from '../language/semantic-tokens';
import { symbols } from '../language/symbols';
import { tickActions } from '../language/tick-actions';
import { offsetAt } from '../text/lines';
import type { Session } from './session';
import { canonicalUri } from './uri';

export function answerRequests(connection: Connection, session: Session): void {
  connection.onHover(({ textDocument, position }) => {
    const place = session.at(textDocument.uri, position);
    const analysis = place && session.analysisOf(place.uri);
    const shown = analysis && hover(session.workspace, analysis, place.offset, session.showing.pictures);
    return shown
      ? {
          contents: { kind: MarkupKind.Markdown, value: shown.markdown },
          range: rangeOf(analysis.file, shown.span),
        }
      : null;
  });

  connection.onCompletion(({ textDocument, position }) => {
    const place = session.at(textDocument.uri, position);
    const items = place ? [...complete(session.workspace, place.uri, place.offset)] : [];
    // Of a list that was cut, others are wanted once more letters are typed.
    return items.length < mostListed ? items : { isIncomplete: true, items };
  });

  connection.onDefinition(({ textDocument, position }) => {
    const place = session.at(textDocument.uri, position);
    return place ? [...definition(session.workspace, session.files, place.uri, place.offset)] : [];
  });

  connection.onDocumentSymbol(({ textDocument }) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? [...symbols(file)] : [];
  });

  connection.languages.inlayHint.on(({ textDocument }) => {
    const analysis = session.analysisOf(canonicalUri(textDocument.uri));
    return analysis ? [...inlayHints(session.workspace, analysis.file, analysis.crafts, session.showing)] : [];
  });

  connection.onCodeAction(({ textDocument, range, context }) => {
    const uri = canonicalUri(textDocument.uri);
    const analysis = session.analysisOf(uri);
    if (!analysis) return [];
    const wanted = (kind: string | undefined): boolean =>
      !context.only || context.only.some((only) => kind === only || kind?.startsWith(`${only}.`));
    const offset = offsetAt(analysis.file.text, analysis.file.lines, range.start);
    return [
      ...actions(analysis, session.files, range),
      ...refactorings(session.workspace, session.files, uri, offset),
      ...tickActions(analysis, session.files, offset, session.today()),
    ].filter((action) => wanted(action.kind));
  });

  connection.onCompletionResolve((item) => resolveItem(session.workspace, item));

  connection.onReferences(({ textDocument, position, context }) => {
    const place = session.at(textDocument.uri, position);
    return place
      ? [...references(session.workspace, session.files, place.uri, place.offset, context.includeDeclaration)]
      : [];
  });

  connection.onPrepareRename(({ textDocument, position }) => {
    const place = session.at(textDocument.uri, position);
    const name = place && nameAt(session.workspace, place.uri, place.offset);
    return name ? { range: rangeOf(session.workspace.get(place.uri)!, name.span), placeholder: name.text } : null;
  });

  connection.onRenameRequest(({ textDocument, position, newName }) => {
    const place = session.at(textDocument.uri, position);
    try {
      return (place && rename(session.workspace, session.files, place.uri, place.offset, newName)) ?? null;
    } catch (error) {
      if (error instanceof CannotRename) throw new ResponseError(LSPErrorCodes.RequestFailed, error.message);
      throw error;
    }
  });

  connection.onWorkspaceSymbol(({ query }) => [...workspaceSymbols(session.workspace, session.files, query)]);

  connection.onDocumentHighlight(({ textDocument, position }) => {
    const place = session.at(textDocument.uri, position);
    const analysis = place && session.analysisOf(place.uri);
    return analysis ? [...highlights(session.workspace, analysis, place.offset)] : [];
  });

  connection.onDocumentLinks(({ textDocument }) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? [...links(session.workspace, session.files, file)] : [];
  });

  connection.onFoldingRanges(({ textDocument }) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? [...folding(file)] : [];
  });

  connection.onSelectionRanges(({ textDocument, positions }) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? positions.map((position) => selection(file, offsetAt(file.text, file.lines, position))) : [];
  });

  connection.onCodeLens(({ textDocument }) => {
    const analysis = session.analysisOf(canonicalUri(textDocument.uri));
    return analysis ? [...codeLenses(session.workspace, analysis, session.files.spelled, session.showing)] : [];
  });

  connection.languages.semanticTokens.on(({ textDocument }) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file && session.showing.colours ? semanticTokens(session.workspace, file) : { data: [] };
  });
}
