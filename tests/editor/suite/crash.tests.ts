/** A server that crashes is started again, but not for ever. */
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { CloseAction } from 'vscode-languageclient/node';
import { restartAfterCrash } from '../../../client/src/crash-policy.ts';

describe('a crash of the server', () => {
  it('is followed by a new start four times in three minutes, then by none', async () => {
    const output = vscode.window.createOutputChannel('Crash test', { log: true });
    const policy = restartAfterCrash(output);
    const actions = [];
    for (let crash = 0; crash < 5; crash++) actions.push((await policy.closed()).action);
    await vscode.commands.executeCommand('notifications.clearAll');
    output.dispose();
    assert.deepEqual(actions, [...Array(4).fill(CloseAction.Restart), CloseAction.DoNotRestart]);
  });
});
