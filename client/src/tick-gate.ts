/** `Dryfit: Tick a gate…`: writes today behind a gate that was passed at the bench. Which gates there are and what is written is the server's business. */
import * as vscode from 'vscode';
import type { Ask } from './new-build.ts';

interface GateState {
  readonly gate: string;
  readonly date: string | null;
  readonly is: 'open' | 'passed' | 'void' | 'unbound';
}

interface Tick {
  readonly range: { readonly start: Position; readonly end: Position };
  readonly newText: string;
}

interface Position {
  readonly line: number;
  readonly character: number;
}

export const registerTickGate = (ask: Ask): vscode.Disposable =>
  vscode.commands.registerCommand('dryfit.tickGate', async (given?: string) => {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId !== 'dryfit') {
      void vscode.window.showInformationMessage('Open the build whose gate was passed.');
      return;
    }
    try {
      const uri = document.uri.toString();
      const gate = given ?? (await askForGate(await ask<GateState[]>('dryfit/gates', { uri })));
      if (gate === undefined) return;
      const { range, newText } = await ask<Tick>('dryfit/tickGate', { uri, gate });
      const edit = new vscode.WorkspaceEdit();
      const { start, end } = range;
      edit.replace(document.uri, new vscode.Range(start.line, start.character, end.line, end.character), newText);
      await vscode.workspace.applyEdit(edit);
    } catch (error) {
      void vscode.window.showErrorMessage((error as Error).message);
    }
  });

/** In the order of work; the first that is open stands first. */
async function askForGate(gates: readonly GateState[]): Promise<string | undefined> {
  const open = gates.filter(({ is }) => is !== 'passed');
  const words = ({ is, date }: GateState): string =>
    is === 'open' ? '' : is === 'void' ? `void: passed ${date}, changed since` : `passed ${date}`;
  const chosen = await vscode.window.showQuickPick(
    [...open, ...gates.filter(({ is }) => is === 'passed')].map((state) => ({
      label: state.gate,
      description: words(state),
    })),
    { title: 'Tick a gate', placeHolder: 'Which gate was passed today?' },
  );
  return chosen?.label;
}
