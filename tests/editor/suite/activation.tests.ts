/** The extension starts for a build file, colours it and survives a restart of its server. */
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { tokenize } from './tokens.ts';
import { closeAll, findings, open, until } from './workspace.ts';

describe('opening a build', () => {
  after(closeAll);

  it('starts the extension by itself', async () => {
    const document = await open('editor-tests/ill-matched.dryfit.yaml');
    assert.equal(document.languageId, 'dryfit');
    const extension = vscode.extensions.getExtension('dryfit.dryfit');
    assert.ok(extension, 'the extension is installed');
    await until('activation', () => (extension.isActive ? true : undefined));
  });

  it("colours keys by the editor's own YAML grammar, and quantities by ours", async () => {
    const document = await open('editor-tests/ill-matched.dryfit.yaml');
    const tokens = await tokenize(document.getText());
    const scopesOf = (text: string) => tokens.find((token) => token.text === text)?.scopes ?? `no token ${text}`;
    assert.match(scopesOf('weight'), /entity\.name\.tag\.yaml/);
    assert.match(scopesOf('31.8'), /constant\.numeric\.quantity\.dryfit/);
    assert.match(scopesOf('g'), /keyword\.other\.unit\.dryfit/);
    assert.match(scopesOf('weighed 2026-10-02'), /storage\.modifier\.origin\.dryfit/);
    assert.match(scopesOf('5.1x3.6x3'), /constant\.numeric\.trade\.dryfit/);
    assert.match(scopesOf('fixture-esc-4s'), /string\.unquoted\.plain\.out\.yaml$/);
    assert.match(scopesOf(' 31.9 g says the shop'), /comment\.line\.number-sign\.yaml$/);
  });

  it('checks again after the server was restarted', async () => {
    const document = await open('editor-tests/ill-matched.dryfit.yaml');
    await until('findings', () => (findings(document).length > 0 ? true : undefined));
    const gone = new Promise<void>((resolve) => {
      const listener = vscode.languages.onDidChangeDiagnostics(() => {
        if (findings(document).length > 0) return;
        listener.dispose();
        resolve();
      });
    });
    await vscode.commands.executeCommand('dryfit.restartServer');
    await gone;
    await until('findings after the restart', () => (findings(document).length > 0 ? true : undefined));
  });
});
