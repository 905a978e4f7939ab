/** Commands that show what is planned for a build beside it, as a page to read and print: order, assembly, set-up, consensus. Asks the server; works nothing out. */
import * as vscode from 'vscode';
import type { Ask } from './new-build.ts';
import { unlessSoon } from './unless-soon.ts';

const scheme = 'dryfit-plan';

interface Plan {
  readonly title: string;
  readonly markdown: string;
}

/** What to ask the server; stands in the address of the page, so that it can be asked again. */
interface Question {
  readonly method: 'dryfit/order' | 'dryfit/assembly' | 'dryfit/setup' | 'dryfit/consensus';
  readonly params: object;
}

interface CraftClass {
  readonly name: string;
  readonly references: number;
  readonly own: boolean;
}

export function registerPlans(ask: Ask): vscode.Disposable[] {
  const changed = new vscode.EventEmitter<vscode.Uri>();
  /** Answers just given, for the page that is about to open. */
  const fresh = new Map<string, string>();

  const provider = vscode.workspace.registerTextDocumentContentProvider(scheme, {
    onDidChange: changed.event,
    async provideTextDocumentContent(uri) {
      const known = fresh.get(uri.toString());
      fresh.delete(uri.toString());
      if (known !== undefined) return drawn(known);
      const { method, params } = JSON.parse(uri.query) as Question;
      return ask<Plan>(method, params).then(
        ({ markdown }) => drawn(markdown),
        (error: Error) => error.message,
      );
    },
  });

  async function show(waiting: string, question: Question): Promise<vscode.Uri | undefined> {
    try {
      const source = new vscode.CancellationTokenSource();
      const answer = ask<Plan>(question.method, question.params, source.token).catch((error: unknown) => {
        // Who gives up waiting knows why there is no page.
        if (source.token.isCancellationRequested) return undefined;
        throw error;
      });
      const plan = await unlessSoon(answer, `Dryfit: ${waiting}`, () => source.cancel()).finally(() =>
        source.dispose(),
      );
      if (!plan) return undefined;
      const uri = vscode.Uri.from({
        scheme,
        path: `/${plan.title.replace(/[\\/]/g, ' ')}.md`,
        query: JSON.stringify(question),
      });
      fresh.set(uri.toString(), plan.markdown);
      changed.fire(uri);
      await openBeside(uri);
      return uri;
    } catch (error) {
      void vscode.window.showErrorMessage((error as Error).message);
      return undefined;
    }
  }

  /** @param given address of a build, or of the builds of several friends who order together */
  const order = (given?: string | readonly string[]) => {
    const uris = Array.isArray(given) ? given : [given ?? buildHere()].filter((uri) => uri !== undefined);
    return uris.length === 0 ? nothingOpen() : show('Planning the order', { method: 'dryfit/order', params: { uris } });
  };
  const ofBuild = (method: Question['method'], waiting: string) => (given?: string) => {
    const uri = given ?? buildHere();
    return uri === undefined ? nothingOpen() : show(waiting, { method, params: { uri } });
  };

  async function consensus(given?: string): Promise<vscode.Uri | undefined> {
    const craftClass = given ?? (await askForClass(ask));
    if (craftClass === undefined) return undefined;
    return show('Comparing the references', { method: 'dryfit/consensus', params: { craftClass } });
  }

  /** Pages follow the text; an order, which takes a second, follows what is saved. */
  let timer: ReturnType<typeof setTimeout> | undefined;
  const refresh = (which: (method: string) => boolean): void => {
    for (const { uri } of vscode.workspace.textDocuments)
      if (uri.scheme === scheme && which((JSON.parse(uri.query) as Question).method)) changed.fire(uri);
  };
  return [
    provider,
    changed,
    vscode.workspace.onDidChangeTextDocument(({ document }) => {
      if (document.languageId !== 'dryfit') return;
      clearTimeout(timer);
      timer = setTimeout(() => refresh((method) => method !== 'dryfit/order'), 300);
    }),
    vscode.workspace.onDidSaveTextDocument((document) => {
      if (document.languageId === 'dryfit') refresh((method) => method === 'dryfit/order');
    }),
    new vscode.Disposable(() => clearTimeout(timer)),
    vscode.commands.registerCommand('dryfit.planOrder', order),
    vscode.commands.registerCommand('dryfit.showAssembly', ofBuild('dryfit/assembly', 'Planning the assembly')),
    vscode.commands.registerCommand('dryfit.showSetup', ofBuild('dryfit/setup', 'Writing the set-up sheet')),
    vscode.commands.registerCommand('dryfit.showConsensus', consensus),
  ];
}

/** Boxes to tick as signs, which the editor's own page of Markdown doesn't draw. */
const drawn = (markdown: string): string =>
  markdown.replace(/^- \[([ x])\] /gm, (_, ticked: string) => (ticked === 'x' ? '- ☑ ' : '- ☐ '));

/** The build in the active editor. */
function buildHere(): string | undefined {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === 'dryfit' ? document.uri.toString() : undefined;
}

function nothingOpen(): undefined {
  void vscode.window.showInformationMessage('Open a build first; its first line is `dryfit: build`.');
  return undefined;
}

async function askForClass(ask: Ask): Promise<string | undefined> {
  const classes = await ask<CraftClass[]>('dryfit/classes', { uri: buildHere() });
  const chosen = await vscode.window.showQuickPick(
    classes.map(({ name, references, own }) => ({
      label: name,
      description: [
        references === 0 ? 'common practice only' : references === 1 ? '1 reference' : `${references} references`,
        ...(own ? ['class of this build'] : []),
      ].join(', '),
    })),
    { title: 'Consensus of a class', placeHolder: 'Which class of craft?' },
  );
  return chosen?.label;
}

/** As a page where the editor can show one; as text where its Markdown is switched off. */
async function openBeside(uri: vscode.Uri): Promise<void> {
  const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true, preview: false };
  try {
    await vscode.commands.executeCommand('vscode.openWith', uri, 'vscode.markdown.preview.editor', column);
  } catch {
    await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(uri), column);
  }
}
