/** What the editor tells and offers at a place: hover, completion, definition, outline. */
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { closeAll, fileUri, finding, open, rangeOf } from './workspace.ts';

describe('help while writing', () => {
  let document: vscode.TextDocument;

  before(async () => {
    document = await open('editor-tests/ill-matched.dryfit.yaml');
    await finding(document, 'esc-cells-exceeded');
  });
  after(closeAll);

  it('shows weight, current and flight time over the name of the build', async () => {
    const card = await hover(rangeOf(document, 'Ill matched'));
    assert.match(card, /weigh/i);
    assert.match(card, /\d g\b/);
    assert.match(card, /\d A\b/);
    assert.match(card, /\d min\b/);
  });

  it('explains a field', async () => {
    assert.match(await hover(rangeOf(document, 'stator')), /stator/i);
  });

  it('completes terms of the trade, each with an explanation', async () => {
    const items = await completions(rangeOf(document, 'freestyle-5').start);
    const term = items.find((item) => labelOf(item) === 'race-5');
    assert.ok(term, items.map(labelOf).join(', '));
    assert.ok(words(term.documentation).length > 10, `explained by "${words(term.documentation)}"`);
  });

  it('completes parts of the workspace', async () => {
    const items = await completions(rangeOf(document, 'fixture-esc-4s').start);
    assert.ok(
      items.some((item) => labelOf(item) === 'fixture-esc-6s'),
      items.map(labelOf).join(', '),
    );
  });

  it('goes to the definition of a part in its parts file', async () => {
    const found = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>(
      'vscode.executeDefinitionProvider',
      document.uri,
      rangeOf(document, 'fixture-esc-4s').start,
    );
    const [target] = found.map((each) =>
      'targetUri' in each ? { uri: each.targetUri, range: each.targetSelectionRange ?? each.targetRange } : each,
    );
    assert.ok(target, 'a definition');
    const parts = await vscode.workspace.openTextDocument(fileUri('editor-tests/parts.dryfit.yaml'));
    assert.equal(target.uri.toString(), parts.uri.toString());
    assert.equal(target.range.start.line, rangeOf(parts, 'fixture-esc-4s').start.line);
  });

  it('lists the parts in the outline', async () => {
    const symbols = await vscode.commands.executeCommand<vscode.DocumentSymbol[]>(
      'vscode.executeDocumentSymbolProvider',
      document.uri,
    );
    const names = symbols.flatMap((symbol) => [symbol, ...symbol.children]).map((symbol) => symbol.name);
    assert.ok(names.includes('motors'), names.join(', '));
  });

  async function hover(range: vscode.Range): Promise<string> {
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      'vscode.executeHoverProvider',
      document.uri,
      range.start,
    );
    return hovers.flatMap((each) => each.contents.map(words)).join('\n');
  }

  async function completions(position: vscode.Position): Promise<vscode.CompletionItem[]> {
    const list = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      document.uri,
      position,
      undefined,
      // Resolves this many, as an explanation may come only then.
      200,
    );
    return list.items;
  }
});

function labelOf({ label }: vscode.CompletionItem): string {
  return typeof label === 'string' ? label : label.label;
}

function words(content: vscode.MarkdownString | vscode.MarkedString | undefined): string {
  if (content === undefined) return '';
  return typeof content === 'string' ? content : content.value;
}
