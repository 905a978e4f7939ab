/** What the tests share: opening files of the test workspace, finding places by text, waiting for answers; asserts nothing about Dryfit. */
import * as vscode from 'vscode';

export function fileUri(relative: string): vscode.Uri {
  const folder = vscode.workspace.workspaceFolders?.[0];
  if (!folder) throw new Error('The editor was opened without the test workspace');
  return vscode.Uri.joinPath(folder.uri, relative);
}

export async function open(relative: string): Promise<vscode.TextDocument> {
  const document = await vscode.workspace.openTextDocument(fileUri(relative));
  await vscode.window.showTextDocument(document, { preview: false });
  return document;
}

export async function closeAll(): Promise<void> {
  for (const document of vscode.workspace.textDocuments) {
    if (!document.isDirty) continue;
    await vscode.window.showTextDocument(document);
    await vscode.commands.executeCommand('workbench.action.files.revert');
  }
  await vscode.commands.executeCommand('workbench.action.closeAllEditors');
}

/** The range of `text`, which stands in the document exactly once. */
export function rangeOf(document: vscode.TextDocument, text: string): vscode.Range {
  const start = document.getText().indexOf(text);
  if (start < 0 || document.getText().indexOf(text, start + 1) >= 0) {
    throw new Error(`"${text}" must stand exactly once in ${document.uri.path}`);
  }
  return new vscode.Range(document.positionAt(start), document.positionAt(start + text.length));
}

export async function replace(document: vscode.TextDocument, text: string, by: string): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  edit.replace(document.uri, rangeOf(document, text), by);
  if (!(await vscode.workspace.applyEdit(edit))) throw new Error(`Could not replace "${text}"`);
}

/** Asks until the answer is there; the error tells what the last answer was. */
export async function until<T>(
  what: string,
  ask: () => T | undefined | Promise<T | undefined>,
  seconds = 15,
): Promise<T> {
  const end = Date.now() + seconds * 1000;
  for (;;) {
    const answer = await ask();
    if (answer !== undefined) return answer;
    if (Date.now() > end) throw new Error(`Waited ${seconds} s in vain for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

export function findings(document: vscode.TextDocument): vscode.Diagnostic[] {
  return vscode.languages.getDiagnostics(document.uri);
}

export function checkId(finding: vscode.Diagnostic): string {
  const { code } = finding;
  return String(typeof code === 'object' ? code.value : code);
}

export function finding(document: vscode.TextDocument, check: string): Promise<vscode.Diagnostic> {
  return until(`${check} in ${document.uri.path}`, () => findings(document).find((found) => checkId(found) === check));
}

export async function noFinding(document: vscode.TextDocument, check: string): Promise<void> {
  await until(`${check} to go from ${document.uri.path}`, () =>
    findings(document).some((found) => checkId(found) === check) ? undefined : true,
  );
}
