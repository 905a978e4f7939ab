/** The language server behind any connection: who may ask for what, and how texts arrive. Knows no Node. */
import {
  type CancellationToken,
  CodeActionKind,
  type Connection,
  ErrorCodes,
  ExecuteCommandRequest,
  type InitializeParams,
  type InitializeResult,
  ResponseError,
  type TextDocumentContentChangeEvent,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { legend } from '../language/semantic-tokens';
import { readShowing } from '../language/showing';
import { fillBuild } from '../language/wish';
import { folderOf } from '../library/workspace';
import { own } from '../text/own';
import type { Answers } from './answers';
import type { Solve } from './plans';
import { Publishing } from './publishing';
import { type ServerSettings, Session } from './session';
import { canonicalUri } from './uri';

/** What the server needs of the disk; a browser has another one. */
export interface Disk {
  /** All build files below the folders, by canonical URI. */
  readFolders(folders: readonly string[]): Promise<ReadonlyMap<string, string>>;
  /** Nothing when the file is gone or is no build file. */
  read(uri: string): Promise<string | undefined>;
}

/** @param solve how orders are solved here */
export function serve(connection: Connection, disk: Disk, settings: ServerSettings, solve: Solve): void {
  const session = new Session(settings);
  const publishing = new Publishing(connection, session);
  const { workspace, open } = session;
  let folders: readonly string[] = [];
  let refreshes: readonly string[] = [];
  let tellsOfFolders = false;

  const take = (uri: string, text: string | undefined): void => {
    const shared = text === undefined ? workspace.delete(uri) : workspace.set(uri, text);
    publishing.changed(uri, shared);
  };

  connection.onInitialize((params: InitializeParams): InitializeResult => {
    session.showing = readShowing(params.initializationOptions);
    const { inlayHint, codeLens, semanticTokens } = params.capabilities.workspace ?? {};
    refreshes = Object.entries({ inlayHint, codeLens, semanticTokens }).flatMap(([name, can]) =>
      can?.refreshSupport ? [`workspace/${name}/refresh`] : [],
    );
    tellsOfFolders = params.capabilities.workspace?.workspaceFolders === true;
    folders = (params.workspaceFolders ?? []).map((folder) => folder.uri);
    if (folders.length === 0 && params.rootUri) folders = [params.rootUri];
    return {
      serverInfo: { name: 'Dryfit', version: settings.version },
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        executeCommandProvider: { commands: [fillBuild] },
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
    publishing.start();
    session.begin();
  };

  /** Watchers miss what is written into a folder in the moment it is made, as a checkout does; so the first file that is heard of brings the others. */
  const readNewFolder = async (uri: string): Promise<void> => {
    await session.begun;
    const folder = folderOf(uri);
    const within = folders.some((one) => folder.startsWith(`${canonicalUri(one).replace(/\/$/, '')}/`));
    if (!within || workspace.uris().some((other) => other !== uri && other.startsWith(folder))) return;
    for (const [other, text] of await disk.readFolders([folder])) if (!open.has(other)) take(other, text);
  };

  connection.onInitialized(async () => {
    // To ask a client for what it doesn't have would end here.
    if (tellsOfFolders)
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
    session.showing = readShowing((sent as { dryfit?: unknown } | null)?.dryfit);
    // Only what this client said it understands: an answer that it doesn't would end the server.
    for (const method of refreshes)
      connection.sendRequest(method).catch((error: unknown) => connection.console.warn(`${method}: ${String(error)}`));
  });

  connection.onDidOpenTextDocument(({ textDocument }) => {
    const uri = canonicalUri(textDocument.uri);
    open.set(uri, {
      spelled: textDocument.uri,
      document: TextDocument.create(textDocument.uri, textDocument.languageId, textDocument.version, textDocument.text),
    });
    const before = workspace.get(uri)?.text;
    if (before === textDocument.text) publishing.changed(uri, false);
    else take(uri, textDocument.text);
    if (before === undefined) void readNewFolder(uri);
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
    // What counts now is what is on disk, which may differ from what was typed and not saved.
    const text = await disk.read(uri);
    if (open.has(uri)) return;
    const shared = text === undefined ? workspace.delete(uri) : workspace.set(uri, text);
    publishing.closed(uri, textDocument.uri);
    if (shared) publishing.changed(uri, true);
  });

  connection.onDidChangeWatchedFiles(async ({ changes }) => {
    for (const change of changes) {
      const uri = canonicalUri(change.uri);
      if (open.has(uri)) continue;
      const isNew = !workspace.get(uri);
      const text = await disk.read(uri);
      if (!open.has(uri)) take(uri, text);
      if (isNew && text !== undefined) await readNewFolder(uri);
    }
  });

  // All that is asked after the first findings is loaded with the first question of its kind.
  let seldom: Promise<Answers> | undefined;
  let requests: Promise<Answers> | undefined;
  const answersTo = (method: string): Promise<Answers> => {
    if (method.startsWith('dryfit/') || method === ExecuteCommandRequest.method) {
      seldom ??= settings.seldom().then((loaded) => loaded.seldom(connection, session, solve));
      return seldom;
    }
    requests ??= settings.requests().then((loaded) => loaded.requests(session));
    return requests;
  };
  connection.onRequest(async (method: string, params: unknown, token: CancellationToken): Promise<unknown> => {
    const answer = own(await answersTo(method), method);
    if (!answer) throw new ResponseError(ErrorCodes.MethodNotFound, `Unhandled method ${method}`);
    // By name or by position, as JSON-RPC leaves it to the client.
    return answer((Array.isArray(params) ? params[0] : params) as never, token);
  });

  connection.listen();
}
