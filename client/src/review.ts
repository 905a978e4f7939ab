/** "Review against…": asks for a version, has the command line compare, shows the result. Compares and words nothing itself. */
import path from 'node:path';
import * as vscode from 'vscode';
import { markIntroduced } from './review-marks.ts';
import { askVersion } from './review-refs.ts';
import { compareWith, type ReviewNode, type ReviewView, type Spot } from './review-run.ts';
import { baseUri, registerBaseTexts } from './review-texts.ts';
import { createTree } from './review-tree.ts';

export function registerReview(context: vscode.ExtensionContext): vscode.Disposable[] {
  const texts = registerBaseTexts();
  const tree = createTree();
  const marks = markIntroduced();
  let root = '';

  async function review(version?: unknown): Promise<ReviewView | undefined> {
    const folder = folderHere();
    if (folder === undefined) {
      void vscode.window.showInformationMessage('Open a build, or a folder with builds, to review it.');
      return undefined;
    }
    const chosen = typeof version === 'string' ? version : await askVersion(vscode.Uri.file(folder));
    if (chosen === undefined) return undefined;
    const cli = context.asAbsolutePath('dist/cli.cjs');
    try {
      const view = await vscode.window.withProgress(
        { location: { viewId: 'dryfit.review' }, title: `Reviewing against ${chosen}` },
        () => compareWith(cli, folder, chosen),
      );
      root = view.root;
      texts.show(view.texts);
      marks.show(view);
      await vscode.commands.executeCommand('setContext', 'dryfit.reviewed', true);
      tree.show(view, unsaved());
      await vscode.commands.executeCommand('dryfit.review.focus');
      return view;
    } catch (error) {
      void vscode.window.showErrorMessage(error instanceof Error ? error.message : String(error));
      return undefined;
    }
  }

  const workingUri = (file: string): vscode.Uri => vscode.Uri.file(path.join(root, file));

  async function open(uri: vscode.Uri, { start, end }: Spot): Promise<void> {
    const selection = new vscode.Range(start.line, start.character, end.line, end.character);
    await vscode.window.showTextDocument(uri, { selection });
  }

  const before = async ({ before }: ReviewNode): Promise<void> => {
    if (before) await open(baseUri(before.file), before);
  };
  const after = async ({ after }: ReviewNode): Promise<void> => {
    if (after) await open(workingUri(after.file), after);
  };

  /** A whole file side by side, else the newer side if there is one. */
  async function jump(node: ReviewNode): Promise<void> {
    if (node.is === 'build' || node.is === 'file') {
      if (node.before && node.after)
        return void (await vscode.commands.executeCommand(
          'vscode.diff',
          baseUri(node.before.file),
          workingUri(node.after.file),
          `${node.after.file} (since ${tree.base()})`,
        ));
    }
    return node.after ? after(node) : before(node);
  }

  return [
    texts,
    tree,
    marks,
    vscode.commands.registerCommand('dryfit.reviewAgainst', review),
    vscode.commands.registerCommand('dryfit.reviewJump', jump),
    vscode.commands.registerCommand('dryfit.reviewBefore', before),
    vscode.commands.registerCommand('dryfit.reviewAfter', after),
  ];
}

/** Where the open build lies, else the first folder. */
function folderHere(): string | undefined {
  const document = vscode.window.activeTextEditor?.document;
  if (document?.uri.scheme === 'file' && document.languageId === 'dryfit') return path.dirname(document.uri.fsPath);
  return vscode.workspace.workspaceFolders?.find(({ uri }) => uri.scheme === 'file')?.uri.fsPath;
}

/** The review is of what is saved. */
const unsaved = (): boolean =>
  vscode.workspace.textDocuments.some((document) => document.languageId === 'dryfit' && document.isDirty);
