/** The commands that every editor has, on a disk or in a browser. Starts no checker. */
import type * as vscode from 'vscode';
import { type Ask, registerNewBuild } from './new-build.ts';
import { registerNewPart } from './new-part.ts';
import { registerPlans } from './plans.ts';
import { registerSheet } from './sheet.ts';
import { registerShow } from './show.ts';
import { registerTickGate } from './tick-gate.ts';

export const registerCommands = (context: vscode.ExtensionContext, ask: Ask): readonly vscode.Disposable[] => [
  ...registerShow(),
  registerNewPart(ask),
  registerNewBuild(ask),
  ...registerPlans(ask),
  registerTickGate(ask),
  registerSheet(context, ask),
];
