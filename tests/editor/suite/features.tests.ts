/** Each feature of the language service asked for by the editor's own commands, in the real editor; what is edited is looked at with git. */
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import * as vscode from 'vscode';
import { closeAll, fileUri, findings, open, rangeOf, replace, until } from './workspace.ts';

const folder = 'three-files';
const library = `${folder}/library.dryfit.yaml`;
const one = `${folder}/one.dryfit.yaml`;

const libraryText = `dryfit: parts
name: Three files   # a comment that stays

parts:
  gull-2207:
    kind: motor
    stator: 2207
    kv: 1750   # as printed
    mount: 16x16 M3
    shaft: M5
    weight: 33 g
  gull-2306:
    kind: motor
    stator: 2306
    kv: 1700
    mount: 16x16 M3
    shaft: M5
    weight: 34 g
`;

const buildText = (name: string) => `dryfit: build
name: ${name}
craft: freestyle-5

parts:
  motors:
    use: 'gull-2207'   # quoted on purpose
    count: 4
  propellers:
    size: 5.1x3.6x3   # mine
    bore: 5 mm
    weight: 4.3 g
    count: 4

packs:
  main:
    cells: 6S
    capacity: 1300 mAh
    plug: XT60
    weight: 205 g
`;

describe('the language service in the editor', () => {
  const root = () => fileUri(folder).fsPath;
  const git = (...args: string[]): string =>
    execFileSync(
      'git',
      ['-c', 'user.name=Test', '-c', 'user.email=test@example.invalid', '-c', 'core.autocrlf=false', ...args],
      {
        cwd: root(),
        encoding: 'utf8',
        timeout: 20_000,
      },
    );
  const changed = (): string[] =>
    git('diff', '--unified=0', '--no-color')
      .split('\n')
      .filter((line) => /^[-+](?![-+])/.test(line));
  let document: vscode.TextDocument;

  before(async () => {
    mkdirSync(root(), { recursive: true });
    writeFileSync(path.join(root(), 'library.dryfit.yaml'), libraryText);
    writeFileSync(path.join(root(), 'one.dryfit.yaml'), buildText('One'));
    writeFileSync(path.join(root(), 'two.dryfit.yaml'), buildText('Two').replaceAll('\n', '\r\n'));
    git('init', '-q');
    git('add', '.');
    git('commit', '-q', '-m', 'Before');
  });
  beforeEach(async () => {
    document = await open(one);
    // The editor takes a moment to see what git put back.
    for (const [file, text] of [
      [one, buildText('One')],
      [library, libraryText],
    ] as const) {
      const shown = await vscode.workspace.openTextDocument(fileUri(file));
      await until(`${file} as it was`, () => (shown.getText() === text ? true : undefined));
    }
    // The library and both builds are known once the part is named in all three.
    // A build that an earlier test began may name it too: the editor keeps a closed document for a while.
    await until('references in three files', async () => {
      const named = new Set((await references()).map(({ uri }) => path.basename(uri.path)));
      return ['library', 'one', 'two'].every((file) => named.has(`${file}.dryfit.yaml`)) ? true : undefined;
    });
  });
  afterEach(async () => {
    await saveAll();
    await closeAll();
    git('checkout', '-q', '--', '.');
    await until('git to put it back', () => (git('status', '--porcelain') === '' ? true : undefined));
  });
  after(() => rmSync(root(), { recursive: true, force: true }));

  it('renames a part in the library and both builds, and nothing else', async () => {
    const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
      'vscode.executeDocumentRenameProvider',
      document.uri,
      rangeOf(document, 'gull-2207').start,
      'gull-big',
    );
    assert.ok(await vscode.workspace.applyEdit(edit));
    await saveAll();
    assert.deepEqual(changed(), [
      '-  gull-2207:',
      '+  gull-big:',
      "-    use: 'gull-2207'   # quoted on purpose",
      "+    use: 'gull-big'   # quoted on purpose",
      "-    use: 'gull-2207'   # quoted on purpose\r",
      "+    use: 'gull-big'   # quoted on purpose\r",
    ]);
  });

  it('moves a part to the parts file: its own lines go, one `use:` comes', async () => {
    await apply('Move this propeller', rangeOf(document, '5.1x3.6x3'));
    await saveAll();
    const lines = changed();
    assert.deepEqual(
      lines.filter((line) => line.startsWith('-')),
      ['-    size: 5.1x3.6x3   # mine', '-    bore: 5 mm', '-    weight: 4.3 g'],
    );
    const added = lines.filter((line) => line.startsWith('+'));
    assert.ok(
      added.some((line) => /^\+ {4}use: my-propeller$/.test(line)),
      added.join('\n'),
    );
    assert.ok(added.includes('+    size: 5.1x3.6x3   # mine'), added.join('\n'));
    assert.deepEqual(git('diff', '--name-only').trim().split('\n'), ['library.dryfit.yaml', 'one.dryfit.yaml']);
  });

  it("writes the library's values here: one line goes, the part's own come", async () => {
    await apply('Write the values of gull-2207 here', rangeOf(document, 'gull-2207'));
    await saveAll();
    assert.deepEqual(changed(), [
      "-    use: 'gull-2207'   # quoted on purpose",
      '+    stator: 2207',
      '+    kv: 1750   # as printed',
      '+    mount: 16x16 M3',
      '+    shaft: M5',
      '+    weight: 33 g',
    ]);
    assert.deepEqual(git('diff', '--name-only').trim().split('\n'), ['one.dryfit.yaml']);
  });

  it('replaces a part by another that fits', async () => {
    await apply('Replace by gull-2306', rangeOf(document, 'gull-2207'));
    await saveAll();
    assert.deepEqual(changed(), [
      "-    use: 'gull-2207'   # quoted on purpose",
      '+    use: gull-2306   # quoted on purpose',
    ]);
  });

  it('completes parts of the right kind at `use:`, those that fit first, with what choosing one would change', async () => {
    const at = rangeOf(document, 'gull-2207').start;
    const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      document.uri,
      at,
      undefined,
      50,
    );
    const labels = items.map(({ label }) => (typeof label === 'string' ? label : label.label));
    assert.ok(labels.includes('gull-2306') && !labels.includes('fixture-esc-6s'), labels.join(', '));
    const other = items[labels.indexOf('gull-2306')];
    const words =
      other?.documentation instanceof vscode.MarkdownString ? other.documentation.value : String(other?.documentation);
    assert.match(words, /\d g/);
  });

  it('offers a whole build of each class in an empty file, and chooses its parts when one is taken', async () => {
    const empty = `${folder}/empty one.dryfit.yaml`;
    writeFileSync(fileUri(empty).fsPath, '');
    const begun = await open(empty);
    const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      begun.uri,
      new vscode.Position(0, 0),
    );
    const item = items.find(
      ({ label }) =>
        label === 'a whole build: whoop-75' ||
        (label as vscode.CompletionItemLabel).label === 'a whole build: whoop-75',
    );
    assert.ok(item?.command && typeof item.insertText === 'string');
    const edit = new vscode.WorkspaceEdit();
    edit.insert(begun.uri, new vscode.Position(0, 0), item.insertText);
    await vscode.workspace.applyEdit(edit);
    await vscode.commands.executeCommand(item.command.command, ...(item.command.arguments ?? []));
    await until('its parts', () => (/^packs:$/m.test(begun.getText()) ? true : undefined));
    assert.match(begun.getText(), /^name: My whoop-75\ncraft: whoop-75\n\nparts:\n {2}frame:$/m);
    await vscode.commands.executeCommand('workbench.action.files.revert');
    rmSync(fileUri(empty).fsPath);
    await open(one);
  });

  it('finds references in all files, and workspace symbols', async () => {
    const found = await references();
    const files = new Set(found.map(({ uri }) => path.posix.basename(uri.path)));
    for (const name of ['one', 'two']) assert.ok(files.has(`${name}.dryfit.yaml`), [...files].join(', '));
    const symbols = await vscode.commands.executeCommand<vscode.SymbolInformation[]>(
      'vscode.executeWorkspaceSymbolProvider',
      'gull-2306',
    );
    assert.ok(symbols.some(({ name }) => name.includes('gull-2306')));
  });

  it('shows hints, lenses, folds, selections, colours, links and highlights', async () => {
    const whole = new vscode.Range(0, 0, document.lineCount, 0);
    const at = rangeOf(document, 'gull-2207').start;
    const ask = <T>(command: string, ...args: unknown[]) =>
      vscode.commands.executeCommand<T>(command, document.uri, ...args);
    const hints = await until('hints', async () =>
      some(await ask<vscode.InlayHint[]>('vscode.executeInlayHintProvider', whole)),
    );
    assert.ok(
      hints.some(({ label }) =>
        /33 g|132 g/.test(typeof label === 'string' ? label : label.map(({ value }) => value).join('')),
      ),
      JSON.stringify(hints.map(({ label }) => label)),
    );
    const lenses = await ask<vscode.CodeLens[]>('vscode.executeCodeLensProvider', 50);
    assert.ok(
      lenses.some(({ command }) => /\d g/.test(command?.title ?? '')),
      lenses.map(({ command }) => command?.title).join(' | '),
    );
    const folds = await ask<vscode.FoldingRange[]>('vscode.executeFoldingRangeProvider');
    assert.ok(folds.some(({ start }) => document.lineAt(start).text === 'parts:'));
    const [selection] = await ask<vscode.SelectionRange[]>('vscode.executeSelectionRangeProvider', [at]);
    assert.ok(selection?.parent, 'a wider selection');
    const tokens = await ask<vscode.SemanticTokens>('vscode.provideDocumentSemanticTokens');
    assert.ok(tokens.data.length > 0);
    const highlights = await ask<vscode.DocumentHighlight[]>('vscode.executeDocumentHighlights', at);
    assert.ok(highlights.length > 0);
    const links = await ask<vscode.DocumentLink[]>('vscode.executeLinkProvider');
    assert.ok(Array.isArray(links));
  });

  it('says which files use a part, above it', async () => {
    const parts = await open(library);
    const lenses = await until('lenses', async () =>
      some(await vscode.commands.executeCommand<vscode.CodeLens[]>('vscode.executeCodeLensProvider', parts.uri, 20)),
    );
    assert.ok(
      lenses.some(({ command }) => /used by 2/.test(command?.title ?? '')),
      lenses.map(({ command }) => command?.title).join(' | '),
    );
  });

  it('switches off what is not wanted', async () => {
    const settings = vscode.workspace.getConfiguration('dryfit');
    const whole = new vscode.Range(0, 0, document.lineCount, 0);
    const weights = async () =>
      (
        await vscode.commands.executeCommand<vscode.InlayHint[]>('vscode.executeInlayHintProvider', document.uri, whole)
      ).filter(({ label }) => / g\b/.test(JSON.stringify(label)));
    await until('weights', async () => some(await weights()));
    await settings.update('show.weights', false, vscode.ConfigurationTarget.Workspace);
    try {
      await until('no weights', async () => ((await weights()).length === 0 ? true : undefined));
    } finally {
      await settings.update('show.weights', undefined, vscode.ConfigurationTarget.Workspace);
    }
  });

  it('shows findings of files that nobody opened', async () => {
    await until('findings of a faulty sample', () => {
      const found = vscode.languages.getDiagnostics(fileUri('faulty/mixed-stack.dryfit.yaml'));
      return found.length > 0 ? found : undefined;
    });
    assert.ok(!vscode.workspace.textDocuments.some(({ uri }) => uri.path.endsWith('mixed-stack.dryfit.yaml')));
  });

  it('begins a build that checks clean', async () => {
    const uri = await vscode.commands.executeCommand<vscode.Uri>('dryfit.newBuild', {
      craft: 'freestyle-5',
      cells: 6,
      propeller: 5.1,
    });
    try {
      const built = await vscode.workspace.openTextDocument(uri);
      assert.match(built.getText(), /^craft: freestyle-5$/m);
      await until('its findings', () => some(findings(built)));
      const grave = findings(built).filter(({ severity }) => severity <= vscode.DiagnosticSeverity.Warning);
      assert.deepEqual(
        grave.map(({ message }) => message),
        [],
      );
    } finally {
      rmSync(uri.fsPath, { force: true });
    }
  });

  it('makes a part of pasted text: a draft first, then lines at the end of the nearest parts file alone', async () => {
    const page = 'Tern 2207 motor\nKV: 1.750\nGewicht: 33,4 g\nLochabstand: 16 x 16 mm, M3';
    const draft = await vscode.commands.executeCommand<vscode.Uri>('dryfit.newPart', { kind: 'motor', text: page });
    assert.equal(draft.scheme, 'untitled');
    const shown = await vscode.workspace.openTextDocument(draft);
    assert.match(shown.getText(), /weight: 33\.4 g \(seller [\d-]+\) {3}# Gewicht: 33,4 g/);
    assert.equal(git('status', '--porcelain'), '');
    await open(one);
    await vscode.commands.executeCommand('dryfit.newPart', { kind: 'motor', text: page, add: true });
    await vscode.workspace.save(fileUri(library));
    const lines = changed();
    assert.ok(
      lines.every((line) => line.startsWith('+')),
      lines.join('\n'),
    );
    assert.ok(lines.includes('+  tern-2207-motor:'), lines.join('\n'));
    assert.deepEqual(git('diff', '--name-only').trim().split('\n'), ['library.dryfit.yaml']);
    for (const open of vscode.workspace.textDocuments.filter(({ isUntitled }) => isUntitled)) {
      await vscode.window.showTextDocument(open);
      await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    }
  });

  it('keeps findings right through edits in quick succession', async () => {
    await replace(document, 'plug: XT60', 'plug: XT30');
    await replace(document, 'plug: XT30', 'plug: XT90');
    await replace(document, 'plug: XT90', 'plug: nonsense');
    await until('the last edit alone', () =>
      findings(document).some(({ message }) => message.includes('nonsense')) ? true : undefined,
    );
    await replace(document, 'plug: nonsense', 'plug: XT60');
    await until('nothing of it', () =>
      findings(document).some(({ message }) => message.includes('nonsense')) ? undefined : true,
    );
  });

  async function references(): Promise<vscode.Location[]> {
    const at = rangeOf(document, 'gull-2207').start;
    return (
      (await vscode.commands.executeCommand<vscode.Location[]>('vscode.executeReferenceProvider', document.uri, at)) ??
      []
    );
  }

  async function apply(title: string, range: vscode.Range): Promise<void> {
    const action = await until(`"${title}"`, async () => {
      const all = await vscode.commands.executeCommand<vscode.CodeAction[]>(
        'vscode.executeCodeActionProvider',
        document.uri,
        range,
      );
      return all.find((each) => each.title.startsWith(title));
    });
    assert.ok(action.edit, 'an edit');
    assert.ok(await vscode.workspace.applyEdit(action.edit));
  }
});

/** Those too that an edit opened and no tab shows. */
async function saveAll(): Promise<void> {
  for (const each of vscode.workspace.textDocuments) if (each.isDirty && !each.isUntitled) assert.ok(await each.save());
}

function some<T>(list: readonly T[] | undefined): readonly T[] | undefined {
  return list && list.length > 0 ? list : undefined;
}
