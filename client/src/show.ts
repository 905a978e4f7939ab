/** Commands that show what the server already knows: the card of a build, the uses of a part. Computes nothing. */
import * as vscode from 'vscode';

/** The card is the hover of the name; shown where it belongs, beside the text. */
async function showCard(uri: string): Promise<void> {
  const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(uri));
  const editor = await vscode.window.showTextDocument(document);
  const line = [...Array(document.lineCount).keys()].find((i) => /^name:\s*\S/.test(document.lineAt(i).text));
  if (line === undefined) return;
  const at = new vscode.Position(line, 'name: '.length);
  editor.selection = new vscode.Selection(at, at);
  editor.revealRange(new vscode.Range(at, at));
  await vscode.commands.executeCommand('editor.action.showHover');
}

async function showUses(uri: string, position: { line: number; character: number }): Promise<void> {
  const where = vscode.Uri.parse(uri);
  const at = new vscode.Position(position.line, position.character);
  const uses = await vscode.commands.executeCommand<vscode.Location[]>('vscode.executeReferenceProvider', where, at);
  await vscode.commands.executeCommand('editor.action.showReferences', where, at, uses ?? []);
}

export function registerShow(): vscode.Disposable[] {
  return [
    vscode.commands.registerCommand('dryfit.showCard', (uri?: string) => {
      const here = uri ?? vscode.window.activeTextEditor?.document.uri.toString();
      return here ? showCard(here) : undefined;
    }),
    vscode.commands.registerCommand('dryfit.showUses', showUses),
  ];
}
