/** Decides what happens when the server dies, and says it in plain words; must not hide that nothing is being checked. */
import * as vscode from 'vscode';
import { CloseAction, ErrorAction, type ErrorHandler } from 'vscode-languageclient/node';

const crashesAllowed = 4;
const withinMs = 3 * 60_000;

export function restartAfterCrash(output: vscode.LogOutputChannel): ErrorHandler {
  const crashes: number[] = [];
  return {
    error: () => ({ action: ErrorAction.Continue }),
    closed() {
      const now = Date.now();
      crashes.push(now);
      const recent = crashes.filter((at) => now - at < withinMs);
      if (recent.length <= crashesAllowed) {
        // Said where it is seen: findings may have been old for a moment.
        void vscode.window.showInformationMessage("Dryfit's checker stopped by itself and was started again.");
        return {
          action: CloseAction.Restart,
          message: 'The checker stopped by itself and was started again.',
          handled: true,
        };
      }
      offerRestart(
        `Dryfit's checker stopped ${recent.length} times in three minutes and stays off. Your files are unharmed, but nothing is being checked.`,
        output,
      );
      return {
        action: CloseAction.DoNotRestart,
        message: 'The checker stays off after repeated crashes.',
        handled: true,
      };
    },
  };
}

export function explainStart(error: unknown, output: vscode.LogOutputChannel): void {
  output.error(error instanceof Error ? error : String(error));
  offerRestart("Dryfit's checker could not start. Your files are unharmed, but nothing is being checked.", output);
}

function offerRestart(message: string, output: vscode.LogOutputChannel): void {
  const restart = 'Start it again';
  const details = 'Show details';
  // Not awaited: the question may stay open for hours.
  void vscode.window.showErrorMessage(message, restart, details).then((choice) => {
    if (choice === restart) return vscode.commands.executeCommand('dryfit.restartServer');
    if (choice === details) output.show();
    return undefined;
  });
}
