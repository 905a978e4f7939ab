/** A review in the editor: the same words as on the command line, jumps to both sides, marks on what the change brought about. */
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import * as vscode from 'vscode';
import { type GitRepository, versionItems } from '../../../client/src/review-refs.ts';
import type { ReviewNode, ReviewView } from '../../../client/src/review-run.ts';
import { closeAll, fileUri, open, until } from './workspace.ts';

const folder = fileUri('reviewed').fsPath;
const build = 'reviewed/ill-matched.dryfit.yaml';
const parts = 'reviewed/parts.dryfit.yaml';

function git(...args: string[]): void {
  execFileSync('git', args, {
    cwd: folder,
    env: {
      ...process.env,
      GIT_CONFIG_GLOBAL: '/dev/null',
      GIT_AUTHOR_NAME: 'Ada Ostrel',
      GIT_AUTHOR_EMAIL: 'ada@example.invalid',
      GIT_COMMITTER_NAME: 'Ada Ostrel',
      GIT_COMMITTER_EMAIL: 'ada@example.invalid',
    },
  });
}

const change = (name: string, from: string, to: string): void => {
  const file = fileUri(name).fsPath;
  writeFileSync(file, readFileSync(file, 'utf8').replace(from, to));
};

describe('a review', () => {
  let view: ReviewView;

  before(async () => {
    mkdirSync(folder);
    cpSync(fileUri('editor-tests').fsPath, folder, { recursive: true });
    // Ids of its own, so that the other builds of the workspace stay as they are.
    for (const name of [build, parts]) {
      const file = fileUri(name).fsPath;
      writeFileSync(file, readFileSync(file, 'utf8').replaceAll('fixture-', 'reviewed-'));
    }
    change(build, 'use: reviewed-esc-4s', 'use: reviewed-esc-6s');
    git('init', '-q', '-b', 'main');
    git('add', '-A');
    git('commit', '-q', '-m', 'As it was');
    change(build, 'use: reviewed-esc-6s', 'use: reviewed-esc-4s');
    await open(build);
    view = (await vscode.commands.executeCommand('dryfit.reviewAgainst', 'main')) as ReviewView;
  });

  after(async () => {
    await closeAll();
    rmSync(folder, { recursive: true, force: true });
  });

  const all = (nodes: readonly ReviewNode[]): readonly ReviewNode[] =>
    nodes.flatMap((node) => [node, ...all(node.nodes ?? [])]);
  const node = (fits: (label: string) => boolean): ReviewNode => {
    const found = all(view.nodes).find(({ label }) => fits(label));
    assert.ok(
      found,
      all(view.nodes)
        .map(({ label }) => label)
        .join('\n'),
    );
    return found;
  };

  it('says what was swapped and what is new', () => {
    assert.match(view.summary, /^1 build differs: /);
    assert.ok(node((label) => label === 'esc: reviewed-esc-6s → reviewed-esc-4s'));
    const found = node((label) => label.includes('esc-cells-exceeded'));
    assert.equal(found.is, 'new');
    assert.equal(found.severity, 'error');
    assert.ok(view.introduced.some(({ check }) => check === 'esc-cells-exceeded'));
  });

  it('jumps to how it is', async () => {
    const swap = node((label) => label.startsWith('esc: '));
    await vscode.commands.executeCommand('dryfit.reviewAfter', swap);
    const editor = await until('the newer side', () =>
      vscode.window.activeTextEditor?.document.uri.fsPath === fileUri(build).fsPath
        ? vscode.window.activeTextEditor
        : undefined,
    );
    assert.equal(editor.document.getText(editor.selection), 'reviewed-esc-4s');
  });

  it('jumps to how it was', async () => {
    const swap = node((label) => label.startsWith('esc: '));
    await vscode.commands.executeCommand('dryfit.reviewBefore', swap);
    const editor = await until('the older side', () =>
      vscode.window.activeTextEditor?.document.uri.scheme === 'dryfit-before'
        ? vscode.window.activeTextEditor
        : undefined,
    );
    assert.equal(editor.document.getText(editor.selection), 'reviewed-esc-6s');
  });

  it('shows a whole build side by side', async () => {
    await vscode.commands.executeCommand('dryfit.reviewJump', view.nodes[0]);
    const tab = await until('a comparison', () => {
      const input = vscode.window.tabGroups.activeTabGroup.activeTab?.input;
      return input instanceof vscode.TabInputTextDiff ? input : undefined;
    });
    assert.equal(tab.original.scheme, 'dryfit-before');
    assert.equal(tab.modified.fsPath, fileUri(build).fsPath);
  });

  it('says what is wrong with a version that is not there', async () => {
    assert.equal(await vscode.commands.executeCommand('dryfit.reviewAgainst', 'nowhere'), undefined);
    await vscode.commands.executeCommand('notifications.clearAll');
  });

  it('offers branches, tags and commits of the editor’s own git', async () => {
    const repository: GitRepository = {
      state: { HEAD: { name: 'longer-arms' } },
      getRefs: async () => [
        { type: 0, name: 'longer-arms', commit: '0123456789ab' },
        { type: 0, name: 'main', commit: 'ba9876543210' },
        { type: 1, name: 'origin/main', commit: 'ba9876543210' },
        { type: 2, name: 'flown-2026', commit: 'cccccccccccc' },
      ],
      log: async () => [{ hash: '0123456789abcdef', message: 'Longer arms\n\nFor seven inches' }],
    };
    const items = await versionItems(repository);
    assert.deepEqual(
      items.map(({ label, version }) => version ?? `– ${label}`),
      [
        '– branches',
        'main',
        'longer-arms',
        '– remote branches',
        'origin/main',
        '– tags',
        'flown-2026',
        '– commits',
        '0123456789abcdef',
      ],
    );
    assert.equal(items.at(-1)?.label, 'Longer arms');
  });
});
