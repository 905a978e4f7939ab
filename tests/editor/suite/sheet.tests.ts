/** The build sheet opened by its command in the editor; what the panel shows is looked at in the workbench page, by tests/sheet. */
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { closeAll, open, until } from './workspace.ts';

describe('the build sheet', () => {
  after(closeAll);

  it('opens beside the file and keeps the caret in it', async () => {
    const document = await open('editor-tests/ill-matched.dryfit.yaml');
    const shown = await vscode.commands.executeCommand<{ uri: string; sections: string[] }>('dryfit.openSheet');
    assert.equal(shown.uri, document.uri.toString());
    assert.ok(shown.sections.includes('wrong'), shown.sections.join(', '));
    assert.equal(vscode.window.activeTextEditor?.document.uri.toString(), document.uri.toString());
    const tab = await until('its tab', () =>
      vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs).find(({ label }) => label.startsWith('Sheet: ')),
    );
    assert.notEqual(tab.group.viewColumn, vscode.window.activeTextEditor?.viewColumn);
  });

  it('is one panel, however often it is asked for', async () => {
    await open('editor-tests/ill-matched.dryfit.yaml');
    await vscode.commands.executeCommand('dryfit.openSheet');
    const sheets = vscode.window.tabGroups.all
      .flatMap(({ tabs }) => tabs)
      .filter(({ label }) => label.startsWith('Sheet: '));
    assert.equal(sheets.length, 1);
  });
});
