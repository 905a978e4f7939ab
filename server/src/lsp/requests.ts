/** Answers what an editor asks about an open text, by the protocol's names, each from one language feature. Keeps no state. A bundle of its own, loaded with the first question. */
import {
  type CodeActionParams,
  type CompletionItem,
  LSPErrorCodes,
  MarkupKind,
  type ReferenceParams,
  type RenameParams,
  ResponseError,
  type SelectionRangeParams,
  type TextDocumentIdentifier,
  type TextDocumentPositionParams,
  type WorkspaceSymbolParams,
} from 'vscode-languageserver';
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
import type { Answers } from './answers';
import type { Session } from './session';
import { canonicalUri } from './uri';

interface OfText {
  readonly textDocument: TextDocumentIdentifier;
}

export const requests = (session: Session): Answers => ({
  'textDocument/hover': ({ textDocument, position }: TextDocumentPositionParams) => {
    const place = session.at(textDocument.uri, position);
    const analysis = place && session.analysisOf(place.uri);
    const shown = analysis && hover(session.workspace, analysis, place.offset, session.showing.pictures);
    return shown
      ? {
          contents: { kind: MarkupKind.Markdown, value: shown.markdown },
          range: rangeOf(analysis.file, shown.span),
        }
      : null;
  },

  'textDocument/completion': ({ textDocument, position }: TextDocumentPositionParams) => {
    const place = session.at(textDocument.uri, position);
    const items = place ? [...complete(session.workspace, place.uri, place.offset)] : [];
    // Of a list that was cut, others are wanted once more letters are typed.
    return items.length < mostListed ? items : { isIncomplete: true, items };
  },

  'textDocument/definition': ({ textDocument, position }: TextDocumentPositionParams) => {
    const place = session.at(textDocument.uri, position);
    return place ? [...definition(session.workspace, session.files, place.uri, place.offset)] : [];
  },

  'textDocument/documentSymbol': ({ textDocument }: OfText) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? [...symbols(file)] : [];
  },

  'textDocument/inlayHint': ({ textDocument }: OfText) => {
    const analysis = session.analysisOf(canonicalUri(textDocument.uri));
    return analysis ? [...inlayHints(session.workspace, analysis.file, analysis.crafts, session.showing)] : [];
  },

  'textDocument/codeAction': ({ textDocument, range, context }: CodeActionParams) => {
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
  },

  'completionItem/resolve': (item: CompletionItem) => resolveItem(session.workspace, item),

  'textDocument/references': ({ textDocument, position, context }: ReferenceParams) => {
    const place = session.at(textDocument.uri, position);
    return place
      ? [...references(session.workspace, session.files, place.uri, place.offset, context.includeDeclaration)]
      : [];
  },

  'textDocument/prepareRename': ({ textDocument, position }: TextDocumentPositionParams) => {
    const place = session.at(textDocument.uri, position);
    const name = place && nameAt(session.workspace, place.uri, place.offset);
    return name ? { range: rangeOf(session.workspace.get(place.uri)!, name.span), placeholder: name.text } : null;
  },

  'textDocument/rename': ({ textDocument, position, newName }: RenameParams) => {
    const place = session.at(textDocument.uri, position);
    try {
      return (place && rename(session.workspace, session.files, place.uri, place.offset, newName)) ?? null;
    } catch (error) {
      if (error instanceof CannotRename) throw new ResponseError(LSPErrorCodes.RequestFailed, error.message);
      throw error;
    }
  },

  'workspace/symbol': ({ query }: WorkspaceSymbolParams) => [
    ...workspaceSymbols(session.workspace, session.files, query),
  ],

  'textDocument/documentHighlight': ({ textDocument, position }: TextDocumentPositionParams) => {
    const place = session.at(textDocument.uri, position);
    const analysis = place && session.analysisOf(place.uri);
    return analysis ? [...highlights(session.workspace, analysis, place.offset)] : [];
  },

  'textDocument/documentLink': ({ textDocument }: OfText) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? [...links(session.workspace, session.files, file)] : [];
  },

  'textDocument/foldingRange': ({ textDocument }: OfText) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? [...folding(file)] : [];
  },

  'textDocument/selectionRange': ({ textDocument, positions }: SelectionRangeParams) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file ? positions.map((position) => selection(file, offsetAt(file.text, file.lines, position))) : [];
  },

  'textDocument/codeLens': ({ textDocument }: OfText) => {
    const analysis = session.analysisOf(canonicalUri(textDocument.uri));
    return analysis ? [...codeLenses(session.workspace, analysis, session.files.spelled, session.showing)] : [];
  },

  'textDocument/semanticTokens/full': ({ textDocument }: OfText) => {
    const file = session.workspace.get(canonicalUri(textDocument.uri));
    return file && session.showing.colours ? semanticTokens(session.workspace, file) : { data: [] };
  },
});
