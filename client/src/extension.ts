/** Starts and stops the checker with the extension; knows nothing of builds, which are the server's business. */
import * as vscode from 'vscode';
import { createChecker } from './checker.ts';
import { type Ask, registerNewBuild } from './new-build.ts';
import { registerNewPart } from './new-part.ts';
import { registerPlans } from './plans.ts';
import { registerReview } from './review.ts';
import { registerSheet } from './sheet.ts';
import { registerShow } from './show.ts';
import { registerTickGate } from './tick-gate.ts';

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const output = vscode.window.createOutputChannel('Dryfit', { log: true });
  const checker = createChecker(context.asAbsolutePath('dist/server.cjs'), output);
  const ask: Ask = (method, params, token) => checker.ask(method, params, token);
  context.subscriptions.push(
    output,
    checker,
    ...registerShow(),
    registerNewPart(ask),
    registerNewBuild(ask),
    ...registerPlans(ask),
    registerTickGate(ask),
    registerSheet(context, ask),
    ...registerReview(context),
    vscode.commands.registerCommand('dryfit.restartServer', () => checker.restart()),
  );
  await checker.start();
}
