/** `Dryfit: New part…`: text from a seller's page becomes a draft to look over, and only on a yes an entry of a parts file. Reads no page and guesses nothing. */
import * as vscode from 'vscode';
import type { Ask } from './new-build.ts';

interface Draft {
  readonly id: string;
  readonly text: string;
  readonly fields: readonly unknown[];
}

interface Added {
  readonly uri: string;
  readonly edit: {
    readonly range: { readonly start: { readonly line: number; readonly character: number } };
    readonly newText: string;
  };
}

/** Given by another command or a test that has the answers already; without `add` the draft is only shown. */
interface Given {
  readonly kind: string;
  readonly text: string;
  readonly add?: boolean;
}

export function registerNewPart(ask: Ask): vscode.Disposable {
  return vscode.commands.registerCommand('dryfit.newPart', async (given?: Given) => {
    const near = nearby();
    const kind = given?.kind ?? (await askForKind(ask));
    const text = kind === undefined ? undefined : (given?.text ?? (await askForText()));
    if (kind === undefined || text === undefined) return undefined;
    const draft = await ask<Draft>('dryfit/draftPart', { kind, text });
    const document = await vscode.workspace.openTextDocument({ language: 'dryfit', content: draft.text });
    await vscode.window.showTextDocument(document, { preview: false });
    if (given) return given.add ? add(ask, near, document) : document.uri;
    return confirm(ask, near, document, kind, text);
  });
}

/** The file or folder whose parts file is meant. */
const nearby = (): string => {
  const active = vscode.window.activeTextEditor?.document.uri;
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  return (
    active && active.scheme !== 'untitled'
      ? active
      : folder
        ? vscode.Uri.joinPath(folder, 'any')
        : vscode.Uri.parse('untitled:any')
  ).toString();
};

async function askForKind(ask: Ask): Promise<string | undefined> {
  const kinds = await ask<string[]>('dryfit/partKinds');
  const chosen = await vscode.window.showQuickPick(
    kinds.map((kind) => ({ label: kind.replaceAll('-', ' '), value: kind })),
    { title: 'New part', placeHolder: 'What kind of part is it?' },
  );
  return chosen?.value;
}

async function askForText(): Promise<string | undefined> {
  const editor = vscode.window.activeTextEditor;
  const selected = editor?.document.getText(editor.selection) ?? '';
  const copied = await vscode.env.clipboard.readText();
  const glance = (text: string): string => text.trim().split(/\s+/).slice(0, 8).join(' ');
  const chosen = await vscode.window.showQuickPick(
    [
      ...(selected.trim() ? [{ label: 'The selected text', description: glance(selected), text: selected }] : []),
      ...(copied.trim() ? [{ label: 'What was copied last', description: glance(copied), text: copied }] : []),
      { label: 'A line typed now', description: '', text: undefined },
    ],
    { title: 'New part', placeHolder: "Where is the text of the seller's page?" },
  );
  if (!chosen) return undefined;
  return (
    chosen.text ??
    vscode.window.showInputBox({
      title: 'New part',
      prompt: 'What does the page say?',
      placeHolder: '2207 1750KV, 16x16 mm M3, 33.4 g',
    })
  );
}

/** The draft may be edited before the answer; what stands in it then is what is added. */
async function confirm(
  ask: Ask,
  near: string,
  document: vscode.TextDocument,
  kind: string,
  text: string,
): Promise<vscode.Uri | undefined> {
  const yes = 'Add it to the nearest parts file';
  const usual = 'Fill in usual values, marked (estimate)';
  const choice = await vscode.window.showInformationMessage(
    'Look the draft over: each value has the words it came from behind it. Nothing is written yet.',
    yes,
    usual,
  );
  if (choice === yes) return add(ask, near, document);
  if (choice !== usual) return document.uri;
  const fuller = await ask<Draft>('dryfit/draftPart', { kind, text, typical: true });
  const edit = new vscode.WorkspaceEdit();
  edit.replace(document.uri, new vscode.Range(0, 0, document.lineCount, 0), fuller.text);
  await vscode.workspace.applyEdit(edit);
  return confirm(ask, near, document, kind, text);
}

async function add(ask: Ask, near: string, document: vscode.TextDocument): Promise<vscode.Uri | undefined> {
  const added = await ask<Added | null>('dryfit/addPart', { near, draft: document.getText() });
  if (!added) {
    void vscode.window.showWarningMessage(
      'There is no parts file to add it to. Save the draft as `my-parts.dryfit.yaml`; it is one already.',
    );
    return document.uri;
  }
  const uri = vscode.Uri.parse(added.uri);
  const { line, character } = added.edit.range.start;
  const edit = new vscode.WorkspaceEdit();
  edit.insert(uri, new vscode.Position(line, character), added.edit.newText);
  await vscode.workspace.applyEdit(edit);
  const shown = await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(uri), { preview: false });
  shown.revealRange(new vscode.Range(line, 0, line + 1, 0));
  return uri;
}
