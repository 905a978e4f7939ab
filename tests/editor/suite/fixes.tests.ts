/** A quick fix changes the wrong word and nothing else. */
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { checkId, closeAll, finding, findings, open, rangeOf, replace, until } from './workspace.ts';

describe('quick fixes', () => {
  afterEach(closeAll);

  it('mends a misspelt term and keeps the rest of the file', async () => {
    const document = await open('editor-tests/ill-matched.dryfit.yaml');
    const sound = document.getText();
    await finding(document, 'esc-cells-exceeded');
    await replace(document, 'craft: freestyle-5', 'craft: freestile-5');
    await applyFix(document, 'freestile-5', /freestyle-5/);
    assert.equal(document.getText(), sound);
  });

  it('mends a misspelt part', async () => {
    const document = await open('editor-tests/ill-matched.dryfit.yaml');
    const sound = document.getText();
    await replace(document, 'use: fixture-esc-4s', 'use: fixture-esc-4z');
    await applyFix(document, 'fixture-esc-4z', /fixture-esc-4s/);
    assert.equal(document.getText(), sound);
    await finding(document, 'esc-cells-exceeded');
  });

  async function applyFix(document: vscode.TextDocument, wrong: string, title: RegExp): Promise<void> {
    const range = rangeOf(document, wrong);
    const found = await until(`a finding on ${wrong}`, () =>
      findings(document).find((each) => each.range.isEqual(range)),
    );
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      document.uri,
      range,
      vscode.CodeActionKind.QuickFix.value,
    );
    const fix = actions.find((action) => title.test(action.title));
    assert.ok(fix?.edit, `${checkId(found)} offers ${actions.map((action) => action.title).join(', ') || 'nothing'}`);
    assert.ok(await vscode.workspace.applyEdit(fix.edit));
  }
});
