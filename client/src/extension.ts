/** Starts and stops the checker with the extension; knows nothing of builds, which are the server's business. */
import * as vscode from 'vscode';
import { createChecker } from './checker.ts';
import { registerReview } from './review.ts';
import { registerShow } from './show.ts';

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const output = vscode.window.createOutputChannel('Dryfit', { log: true });
  const checker = createChecker(context.asAbsolutePath('dist/server.cjs'), output);
  context.subscriptions.push(
    output,
    checker,
    ...registerShow(),
    ...registerReview(context),
    vscode.commands.registerCommand('dryfit.restartServer', () => checker.restart()),
  );
  await checker.start();
}
