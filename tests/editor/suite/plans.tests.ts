/** What is planned for a build, shown beside it: the same text as on the command line, following the build; and gates ticked in it. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import * as vscode from 'vscode';
import { closeAll, fileUri, open, replace, until } from './workspace.ts';

const name = 'builds/ossel-5.dryfit.yaml';

function commandLine(...args: string[]): string {
  const cli = path.join(vscode.extensions.getExtension('dryfit.dryfit')!.extensionPath, 'dist/cli.cjs');
  const { stdout } = spawnSync(process.execPath, [cli, ...args, '--format', 'markdown'], {
    cwd: fileUri('.').fsPath,
    encoding: 'utf8',
    env: { ...process.env, ELECTRON_RUN_AS_NODE: '1' },
  });
  // As drawn on the page.
  return stdout.replaceAll('\n- [ ] ', '\n- ☐ ').replaceAll('\n- [x] ', '\n- ☑ ');
}

async function shown(command: string, ...args: unknown[]): Promise<vscode.TextDocument> {
  const uri = await vscode.commands.executeCommand<vscode.Uri | undefined>(command, ...args);
  assert.ok(uri, `${command} shows nothing`);
  await until(`a page of ${uri.path}`, () =>
    vscode.window.tabGroups.all
      .flatMap(({ tabs }) => tabs)
      .find(
        ({ input, group }) =>
          input instanceof vscode.TabInputCustom &&
          input.uri.toString() === uri.toString() &&
          group.viewColumn !== vscode.ViewColumn.One,
      ),
  );
  return vscode.workspace.openTextDocument(uri);
}

describe('plans beside a build', () => {
  let build: vscode.TextDocument;

  before(async () => {
    build = await open(name);
  });
  afterEach(async () => {
    await closeAll();
    build = await open(name);
  });
  after(closeAll);

  it('the order, proved, by parcel', async () => {
    const page = await shown('dryfit.planOrder');
    assert.match(page.uri.path, /Ossel 5 order\.md$/);
    assert.equal(page.getText(), commandLine('order', name));
    assert.match(page.getText(), /### Parcel 2 from/);
    assert.match(page.getText(), /No order from these offers is cheaper: proved\./);
    // Two shops are used: one fewer is one.
    assert.match(page.getText(), /All from pellam: [\d.]+, [\d.]+ more\./);
  });

  it('the order of several friends together', async () => {
    const others = ['builds/dart-5.dryfit.yaml', name];
    const page = await shown(
      'dryfit.planOrder',
      others.map((one) => fileUri(one).toString()),
    );
    assert.equal(page.getText(), commandLine('order', ...others));
  });

  it('the assembly', async () => {
    const page = await shown('dryfit.showAssembly');
    assert.equal(page.getText(), commandLine('assemble', name));
  });

  it('the set-up, following what is typed', async () => {
    const page = await shown('dryfit.showSetup');
    assert.equal(page.getText(), commandLine('setup', name));
    await vscode.window.showTextDocument(build, vscode.ViewColumn.One);
    await replace(build, 'name: Ossel 5', 'name: Ossel five');
    await until('the new name on the page', () => (page.getText().includes('Ossel five') ? true : undefined));
  });

  it('the consensus of a class', async () => {
    const page = await shown('dryfit.showConsensus', 'freestyle-5');
    assert.equal(page.getText(), commandLine('consensus', 'freestyle-5'));
  });

  it('a gate is ticked in the build, and its steps in the page', async () => {
    const page = await shown('dryfit.showAssembly');
    const editor = await vscode.window.showTextDocument(build, vscode.ViewColumn.One);
    await vscode.commands.executeCommand('dryfit.tickGate', 'dry-fit');
    const today = new Date().toISOString().slice(0, 10);
    assert.match(editor.document.getText(), new RegExp(`gates:\\n {2}dry-fit: ${today} \\([0-9a-f]{6}\\)\\n$`));
    await until('the tick on the page', () =>
      page.getText().includes(`- ☑ **Gate \`dry-fit\`** (${today})`) ? true : undefined,
    );
  });

  it('says that a bench has no order', async () => {
    await open('bench.dryfit.yaml');
    assert.equal(await vscode.commands.executeCommand('dryfit.planOrder'), undefined);
    await vscode.commands.executeCommand('notifications.clearAll');
  });
});
