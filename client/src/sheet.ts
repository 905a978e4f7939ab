/** `Dryfit: Open build sheet`: a panel beside the file that follows it. Passes sections, clicks and tries between the server and the panel; draws and computes nothing. */
import * as vscode from 'vscode';
import type { Ask } from './new-build.ts';
import {
  type Answer,
  type FromPanel,
  isAt,
  type Kept,
  type SpotPlace,
  type Spots,
  type ToPanel,
} from './sheet-messages.ts';
import { sheetPanelPage } from './sheet-page.ts';
import { unlessSoon } from './unless-soon.ts';

/** What the panel has shown, for whoever opened it. */
export interface Shown {
  readonly uri: string;
  readonly sections: readonly string[];
}

const isBuild = (document: vscode.TextDocument | undefined): document is vscode.TextDocument =>
  document?.languageId === 'dryfit';

/** The style rules of the sheet, which the server has. */
const lookOf = (ask: Ask): Promise<string> => ask<string>('dryfit/sheetLook');

export function registerSheet(context: vscode.ExtensionContext, ask: Ask): vscode.Disposable {
  let open: SheetPanel | undefined;
  const gone = (): void => {
    open = undefined;
  };
  const command = vscode.commands.registerCommand(
    'dryfit.openSheet',
    async (given?: string): Promise<Shown | undefined> => {
      const uri = given ?? vscode.window.activeTextEditor?.document.uri.toString() ?? open?.uri;
      if (uri === undefined) {
        void vscode.window.showInformationMessage('Open a build to see its sheet.');
        return undefined;
      }
      open ??= await SheetPanel.create(context, ask, gone);
      return open.show(uri);
    },
  );
  // A window that is loaded again brings its panels along, empty.
  const brought = vscode.window.registerWebviewPanelSerializer('dryfit.sheet', {
    async deserializeWebviewPanel(panel: vscode.WebviewPanel, kept?: Kept): Promise<void> {
      const look = await lookOf(ask);
      open?.dispose();
      open = SheetPanel.within(panel, context, ask, look, gone);
      // Its page is put up only when this is done, so that it cannot wait for what is drawn there.
      if (kept?.uri !== undefined) void open.show(kept.uri);
    },
  });
  return {
    dispose() {
      command.dispose();
      brought.dispose();
      open?.dispose();
    },
  };
}

/** ms after which a sheet is asked for again when findings changed while it was drawn; mostly it is the same one. */
const settle = 300;

/** One panel; it shows the build of the active editor, and the last one while something else is active. */
class SheetPanel implements vscode.Disposable {
  /** The build that is wanted, and the one that was drawn last. */
  uri = '';
  private drawn = '';
  /** Serial of the answer that the panel shows. */
  private has: number | undefined;
  private spots: Spots = {};
  /** What the panel was told last to mark. */
  private lit = '';
  private tries: Record<string, number> = {};
  private pending: vscode.CancellationTokenSource | undefined;
  private again = false;
  private readonly waiting: ((shown: Shown) => void)[] = [];
  private readonly rest: vscode.Disposable[];

  static async create(context: vscode.ExtensionContext, ask: Ask, gone: () => void): Promise<SheetPanel> {
    // Asked for first: without a server there is no panel, rather than an empty one.
    const look = await lookOf(ask);
    const panel = vscode.window.createWebviewPanel(
      'dryfit.sheet',
      'Build sheet',
      { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
      { retainContextWhenHidden: true },
    );
    return SheetPanel.within(panel, context, ask, look, gone);
  }

  static within(
    panel: vscode.WebviewPanel,
    context: vscode.ExtensionContext,
    ask: Ask,
    look: string,
    gone: () => void,
  ): SheetPanel {
    const dist = vscode.Uri.joinPath(context.extensionUri, 'dist');
    panel.webview.options = { enableScripts: true, localResourceRoots: [dist] };
    panel.iconPath = vscode.Uri.joinPath(context.extensionUri, 'client/media/icon.png');
    return new SheetPanel(panel, ask, gone, (webview) =>
      sheetPanelPage(webview, vscode.Uri.joinPath(dist, 'sheet-panel.js'), look),
    );
  }

  private constructor(
    private readonly panel: vscode.WebviewPanel,
    private readonly ask: Ask,
    gone: () => void,
    page: (webview: vscode.Webview) => string,
  ) {
    this.rest = [
      panel.webview.onDidReceiveMessage((message: FromPanel) => this.take(message)),
      vscode.window.onDidChangeActiveTextEditor((editor) => {
        if (isBuild(editor?.document)) this.follow(editor.document.uri.toString());
      }),
      vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
        if (isBuild(document) && contentChanges.length > 0) this.refresh();
      }),
      // Parts, shops and benches that change on disk change findings, which is how it is heard of.
      vscode.languages.onDidChangeDiagnostics(({ uris }) => {
        if (!uris.some((uri) => uri.toString() === this.uri)) return;
        // An edit is on its way already; what else has changed shows once it is drawn.
        if (this.pending) this.again = true;
        else void this.refresh();
      }),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.light(textEditor)),
      panel.onDidDispose(() => {
        gone();
        this.dispose();
      }),
    ];
    panel.webview.html = page(panel.webview);
  }

  /** Resolves when it is drawn. */
  show(uri: string): Promise<Shown> {
    this.panel.reveal(undefined, true);
    return new Promise((resolve) => {
      this.waiting.push(resolve);
      this.follow(uri, true);
    });
  }

  dispose(): void {
    this.pending?.cancel();
    for (const one of this.rest.splice(0)) one.dispose();
    this.panel.dispose();
  }

  private follow(uri: string, again = false): void {
    if (uri === this.uri && !again) return;
    if (uri !== this.uri) this.tries = {};
    this.uri = uri;
    void this.refresh();
  }

  /** A newer question takes the place of one that is still being answered. */
  private async refresh(): Promise<void> {
    const { uri } = this;
    if (uri === '' || this.rest.length === 0) return;
    this.pending?.cancel();
    const mine = new vscode.CancellationTokenSource();
    this.pending = mine;
    const asked = this.ask<Answer | null>(
      'dryfit/sheet',
      { uri, tries: this.tries, since: this.has, ...this.caret(uri) },
      mine.token,
    );
    try {
      const answer = await unlessSoon(asked, 'Dryfit: Drawing the build sheet', () => mine.cancel());
      if (mine.token.isCancellationRequested) return;
      // A parts file or a bench has no sheet: the last build stays, drawn anew.
      if (!answer && this.drawn !== '' && this.drawn !== uri) this.follow(this.drawn);
      else this.draw(answer ?? undefined);
    } catch (error) {
      if (!mine.token.isCancellationRequested) this.say(`The sheet could not be drawn: ${String(error)}`);
    } finally {
      if (this.pending === mine) {
        this.pending = undefined;
        if (this.again) setTimeout(() => void this.refresh(), settle);
        this.again = false;
      }
      mine.dispose();
    }
  }

  private draw(answer: Answer | undefined): void {
    this.has = answer?.serial;
    if (!answer) {
      this.say('This file is no build. Its first line would be `dryfit: build`.');
      return;
    }
    this.drawn = this.uri;
    this.panel.title = `Sheet: ${answer.name}`;
    this.spots = answer.spots ?? this.spots;
    this.post({ is: 'sheet', uri: this.uri, ids: answer.ids, changed: answer.changed });
    this.light(vscode.window.activeTextEditor);
  }

  private say(words: string): void {
    this.has = undefined;
    this.spots = {};
    this.post({ is: 'nothing', words });
  }

  private post(message: ToPanel): void {
    void this.panel.webview.postMessage(message);
  }

  /** Where the caret is, for a file of several builds. */
  private caret(uri: string): { line?: number } {
    const editor = vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri);
    return editor && /^---/m.test(editor.document.getText()) ? { line: editor.selection.active.line } : {};
  }

  /** Marks what the caret stands in. */
  private light(editor: vscode.TextEditor | undefined): void {
    if (!editor || !isBuild(editor.document)) return;
    const uri = editor.document.uri.toString();
    const { line } = editor.selection.active;
    const lit = Object.entries(this.spots).flatMap(([spot, place]) => (isAt(place, uri, line) ? [spot] : []));
    // The panel remembers; each message costs it a turn, and the caret moves with every letter.
    if (lit.join() === this.lit) return;
    this.lit = lit.join();
    this.post({ is: 'lit', spots: lit });
  }

  private async take(message: FromPanel): Promise<void> {
    switch (message.is) {
      case 'ready':
        this.has = undefined;
        this.lit = '';
        return this.refresh();
      case 'drawn':
        for (const resolve of this.waiting.splice(0)) resolve({ uri: this.uri, sections: message.sections });
        return;
      case 'go':
        return this.go(message.spot);
      case 'try':
        this.tries = { ...this.tries, [message.field]: message.value };
        return this.refresh();
      case 'forget': {
        const { [message.field]: _, ...others } = this.tries;
        this.tries = others;
        return this.refresh();
      }
      case 'write':
        return this.write(message.field);
    }
  }

  private async go(spot: string): Promise<void> {
    const place = this.spots[spot]?.go;
    if (!place) return;
    const uri = vscode.Uri.parse(place.uri);
    const { start, end } = place.range;
    const shown = vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString());
    await vscode.window.showTextDocument(uri, {
      selection: new vscode.Range(start.line, start.character, end.line, end.character),
      viewColumn:
        shown?.viewColumn ??
        (this.panel.viewColumn === vscode.ViewColumn.One ? vscode.ViewColumn.Beside : vscode.ViewColumn.One),
    });
  }

  /** Writes one tried value where it belongs; the file stays unsaved, so that undo takes it back. */
  private async write(field: string): Promise<void> {
    const value = this.tries[field];
    if (value === undefined) return;
    const written = await this.ask<Written | null>('dryfit/sheetWrite', {
      uri: this.uri,
      field,
      value,
      ...this.caret(this.uri),
    });
    if (!written) {
      void vscode.window.showWarningMessage(`There is no place in the file for \`${field}\`.`);
      return;
    }
    const { start, end } = written.edit.range;
    const { [field]: _, ...others } = this.tries;
    this.tries = others;
    const edit = new vscode.WorkspaceEdit();
    edit.replace(
      vscode.Uri.parse(written.uri),
      new vscode.Range(start.line, start.character, end.line, end.character),
      written.edit.newText,
    );
    await vscode.workspace.applyEdit(edit);
  }
}

interface Written {
  readonly uri: string;
  readonly edit: { readonly range: SpotPlace['go']['range']; readonly newText: string };
}
