/** The language server behind any connection: keeps the workspace as the client sees it and answers from the language features. Knows no Node. */
import {
  CodeActionKind,
  type Connection,
  type InitializeParams,
  type InitializeResult,
  LSPErrorCodes,
  MarkupKind,
  ResponseError,
  type TextDocumentContentChangeEvent,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Analysis, analyse } from '../analysis';
import { allChecks } from '../checks/generated/all';
import { actions } from '../language/actions';
import { codeLenses } from '../language/code-lens';
import { complete, resolveItem } from '../language/completion';
import { definition } from '../language/definition';
import { hover } from '../language/hover';
import { inlayHints } from '../language/inlay-hints';
import { diagnosticOf, type Files, rangeOf } from '../language/protocol';
import { folding, selection } from '../language/ranges';
import { refactorings } from '../language/refactor';
import { highlights, links, references, workspaceSymbols } from '../language/references';
import { CannotRename, nameAt, rename } from '../language/rename';
import { legend, semanticTokens } from '../language/semantic-tokens';
import { everything, readShowing, type Showing } from '../language/showing';
import { symbols } from '../language/symbols';
import { Workspace } from '../library/workspace';
import { referencePage } from '../report/reference';
import { offsetAt } from '../text/lines';
import { canonicalUri } from './uri';

/** What the server needs of the disk; a browser has another one. */
export interface Disk {
  /** All build files below the folders, by canonical URI. */
  readFolders(folders: readonly string[]): Promise<ReadonlyMap<string, string>>;
  /** Nothing when the file is gone or is no build file. */
  read(uri: string): Promise<string | undefined>;
}

export interface ServerSettings {
  readonly version: string;
  /** Address of the page of all checks, which each finding links to; none where there is no such page. */
  readonly reference?: string;
  /** Today as YYYY-MM-DD; the engine itself has no clock. */
  today(): string;
}

export function serve(connection: Connection, disk: Disk, settings: ServerSettings): void {
  const workspace = new Workspace();
  const open = new Map<string, { spelled: string; document: TextDocument }>();
  const analyses = new Map<string, { text: string; shared: number; analysis: Analysis }>();
  let folders: readonly string[] = [];
  let showing: Showing = everything;
  /** The folders have been read once. */
  let read = false;

  const page = settings.reference === undefined ? undefined : referencePage(allChecks).lines;
  const files: Files = {
    get: (uri) => workspace.get(uri),
    spelled: (uri) => open.get(uri)?.spelled ?? uri,
    explains: (check) => (page?.has(check) ? `${settings.reference}#L${page.get(check)}` : undefined),
  };

  const analysisOf = (uri: string): Analysis | undefined => {
    const file = workspace.get(uri);
    if (!file) return undefined;
    const known = analyses.get(uri);
    if (known && known.analysis.file === file && known.shared === workspace.version) return known.analysis;
    const analysis = analyse(workspace, uri, { today: settings.today() });
    if (analysis) analyses.set(uri, { text: file.text, shared: workspace.version, analysis });
    return analysis;
  };

  const publish = (uri: string): void => {
    const shown = open.get(uri);
    // Before the parts files are read, every `use:` would look lost.
    const analysis = shown && read ? analysisOf(uri) : undefined;
    if (!shown || !analysis) return;
    const diagnostics = analysis.findings.map((finding) => diagnosticOf(files, analysis.file, finding));
    void connection.sendDiagnostics({ uri: shown.spelled, version: shown.document.version, diagnostics });
  };

  /** A change that other files can see is shown in all open ones. */
  const take = (uri: string, text: string | undefined): void => {
    const shared = text === undefined ? workspace.delete(uri) : workspace.set(uri, text);
    if (shared) for (const other of open.keys()) publish(other);
    else publish(uri);
  };

  connection.onInitialize((params: InitializeParams): InitializeResult => {
    showing = readShowing(params.initializationOptions);
    folders = (params.workspaceFolders ?? []).map((folder) => folder.uri);
    if (folders.length === 0 && params.rootUri) folders = [params.rootUri];
    return {
      serverInfo: { name: 'Dryfit', version: settings.version },
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        completionProvider: { triggerCharacters: [':', ' ', '-'], resolveProvider: true },
        definitionProvider: true,
        documentSymbolProvider: true,
        inlayHintProvider: true,
        referencesProvider: true,
        renameProvider: { prepareProvider: true },
        workspaceSymbolProvider: true,
        documentHighlightProvider: true,
        documentLinkProvider: {},
        foldingRangeProvider: true,
        selectionRangeProvider: true,
        codeLensProvider: {},
        semanticTokensProvider: { legend, full: true },
        codeActionProvider: {
          codeActionKinds: [
            CodeActionKind.QuickFix,
            CodeActionKind.RefactorExtract,
            CodeActionKind.RefactorInline,
            CodeActionKind.RefactorRewrite,
          ],
        },
        workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
      },
    };
  });

  const readFolders = async (): Promise<void> => {
    const found = await disk.readFolders(folders);
    for (const [uri, text] of found) if (!open.has(uri)) workspace.set(uri, text);
    read = true;
    for (const uri of open.keys()) publish(uri);
  };

  connection.onInitialized(async () => {
    connection.workspace.onDidChangeWorkspaceFolders(async ({ added, removed }) => {
      const gone = new Set(removed.map((folder) => folder.uri));
      folders = [...folders.filter((folder) => !gone.has(folder)), ...added.map((folder) => folder.uri)];
      for (const uri of workspace.uris())
        if (!open.has(uri) && ![...folders].some((folder) => uri.startsWith(canonicalUri(folder))))
          workspace.delete(uri);
      await readFolders();
    });
    await readFolders();
  });

  connection.onDidChangeConfiguration(({ settings: sent }) => {
    showing = readShowing((sent as { dryfit?: unknown } | null)?.dryfit);
    void connection.languages.inlayHint.refresh();
    void connection.languages.semanticTokens.refresh();
    void connection.sendRequest('workspace/codeLens/refresh').catch(() => undefined);
  });

  connection.onDidOpenTextDocument(({ textDocument }) => {
    const uri = canonicalUri(textDocument.uri);
    open.set(uri, {
      spelled: textDocument.uri,
      document: TextDocument.create(textDocument.uri, textDocument.languageId, textDocument.version, textDocument.text),
    });
    const before = workspace.get(uri)?.text;
    if (before === textDocument.text) publish(uri);
    else take(uri, textDocument.text);
  });

  connection.onDidChangeTextDocument(({ textDocument, contentChanges }) => {
    const uri = canonicalUri(textDocument.uri);
    const shown = open.get(uri);
    if (!shown) return;
    shown.document = TextDocument.update(
      shown.document,
      contentChanges as TextDocumentContentChangeEvent[],
      textDocument.version ?? shown.document.version + 1,
    );
    take(uri, shown.document.getText());
  });

  connection.onDidCloseTextDocument(async ({ textDocument }) => {
    const uri = canonicalUri(textDocument.uri);
    open.delete(uri);
    analyses.delete(uri);
    void connection.sendDiagnostics({ uri: textDocument.uri, diagnostics: [] });
    // What counts now is what is on disk, which may differ from what was typed and not saved.
    const text = await disk.read(uri);
    if (!open.has(uri)) take(uri, text);
  });

  connection.onDidChangeWatchedFiles(async ({ changes }) => {
    for (const change of changes) {
      const uri = canonicalUri(change.uri);
      if (open.has(uri)) continue;
      const text = await disk.read(uri);
      if (!open.has(uri)) take(uri, text);
    }
  });

  const at = (
    uri: string,
    position: { line: number; character: number },
  ): { uri: string; offset: number } | undefined => {
    const canonical = canonicalUri(uri);
    const file = workspace.get(canonical);
    return file && { uri: canonical, offset: offsetAt(file.text, file.lines, position) };
  };

  connection.onHover(({ textDocument, position }) => {
    const place = at(textDocument.uri, position);
    const shown = place && hover(workspace, place.uri, place.offset);
    return shown
      ? {
          contents: { kind: MarkupKind.Markdown, value: shown.markdown },
          range: rangeOf(workspace.get(place.uri)!, shown.span),
        }
      : null;
  });

  connection.onCompletion(({ textDocument, position }) => {
    const place = at(textDocument.uri, position);
    return place ? [...complete(workspace, place.uri, place.offset)] : [];
  });

  connection.onDefinition(({ textDocument, position }) => {
    const place = at(textDocument.uri, position);
    return place ? [...definition(workspace, files, place.uri, place.offset)] : [];
  });

  connection.onDocumentSymbol(({ textDocument }) => {
    const file = workspace.get(canonicalUri(textDocument.uri));
    return file ? [...symbols(file)] : [];
  });

  connection.languages.inlayHint.on(({ textDocument }) => {
    const analysis = analysisOf(canonicalUri(textDocument.uri));
    return analysis ? [...inlayHints(workspace, analysis.file, analysis.crafts, showing)] : [];
  });

  connection.onCodeAction(({ textDocument, range, context }) => {
    const uri = canonicalUri(textDocument.uri);
    const analysis = analysisOf(uri);
    if (!analysis) return [];
    const wanted = (kind: string | undefined): boolean =>
      !context.only || context.only.some((only) => kind === only || kind?.startsWith(`${only}.`));
    const offset = offsetAt(analysis.file.text, analysis.file.lines, range.start);
    return [...actions(analysis, files, range), ...refactorings(workspace, files, uri, offset)].filter((action) =>
      wanted(action.kind),
    );
  });

  connection.onCompletionResolve((item) => resolveItem(workspace, item));

  connection.onReferences(({ textDocument, position, context }) => {
    const place = at(textDocument.uri, position);
    return place ? [...references(workspace, files, place.uri, place.offset, context.includeDeclaration)] : [];
  });

  connection.onPrepareRename(({ textDocument, position }) => {
    const place = at(textDocument.uri, position);
    const name = place && nameAt(workspace, place.uri, place.offset);
    return name ? { range: rangeOf(workspace.get(place.uri)!, name.span), placeholder: name.text } : null;
  });

  connection.onRenameRequest(({ textDocument, position, newName }) => {
    const place = at(textDocument.uri, position);
    try {
      return (place && rename(workspace, files, place.uri, place.offset, newName)) ?? null;
    } catch (error) {
      if (error instanceof CannotRename) throw new ResponseError(LSPErrorCodes.RequestFailed, error.message);
      throw error;
    }
  });

  connection.onWorkspaceSymbol(({ query }) => [...workspaceSymbols(workspace, files, query)]);

  connection.onDocumentHighlight(({ textDocument, position }) => {
    const place = at(textDocument.uri, position);
    const analysis = place && analysisOf(place.uri);
    return analysis ? [...highlights(workspace, analysis, place.offset)] : [];
  });

  connection.onDocumentLinks(({ textDocument }) => {
    const file = workspace.get(canonicalUri(textDocument.uri));
    return file ? [...links(workspace, files, file)] : [];
  });

  connection.onFoldingRanges(({ textDocument }) => {
    const file = workspace.get(canonicalUri(textDocument.uri));
    return file ? [...folding(file)] : [];
  });

  connection.onSelectionRanges(({ textDocument, positions }) => {
    const file = workspace.get(canonicalUri(textDocument.uri));
    return file ? positions.map((position) => selection(file, offsetAt(file.text, file.lines, position))) : [];
  });

  connection.onCodeLens(({ textDocument }) => {
    const analysis = analysisOf(canonicalUri(textDocument.uri));
    return analysis ? [...codeLenses(workspace, analysis, files.spelled, showing)] : [];
  });

  connection.languages.semanticTokens.on(({ textDocument }) => {
    const file = workspace.get(canonicalUri(textDocument.uri));
    return file && showing.colours ? semanticTokens(workspace, file) : { data: [] };
  });

  connection.listen();
}
