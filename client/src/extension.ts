/** Starts and stops the checker with the extension; knows nothing of builds, which are the server's business. */
import * as vscode from 'vscode';
import { createChecker } from './checker.ts';
import { registerCommands } from './commands.ts';
import type { Ask } from './new-build.ts';
import { registerReview } from './review.ts';

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const output = vscode.window.createOutputChannel('Dryfit', { log: true });
  const checker = createChecker(context.asAbsolutePath('dist/server.cjs'), output);
  const ask: Ask = (method, params, token) => checker.ask(method, params, token);
  context.subscriptions.push(
    output,
    checker,
    ...registerCommands(context, ask),
    ...registerReview(context),
    vscode.commands.registerCommand('dryfit.restartServer', () => checker.restart()),
  );
  await checker.start();
}
