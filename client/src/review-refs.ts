/** Asks with which branch, tag or commit to compare, from the editor's own git; by an input box where there is none. */
import * as vscode from 'vscode';

/** What is used of the git extension's interface, version 1. */
export interface GitRepository {
  readonly state: {
    readonly HEAD?: { readonly name?: string };
    readonly refs?: readonly GitRef[];
  };
  getRefs?(query: { sort?: 'alphabetically' | 'committerdate' }): Promise<readonly GitRef[]>;
  log?(options: { maxEntries: number }): Promise<readonly { readonly hash: string; readonly message: string }[]>;
}
interface GitRef {
  /** 0 a branch, 1 a remote one, 2 a tag. */
  readonly type: number;
  readonly name?: string;
  readonly commit?: string;
}

export interface VersionItem extends vscode.QuickPickItem {
  /** Absent on separators and on the item that asks for another one. */
  readonly version?: string;
}

const OTHER = 'Another version…';

export async function askVersion(folder: vscode.Uri): Promise<string | undefined> {
  let items: readonly VersionItem[] = [];
  try {
    const repository = await gitRepository(folder);
    if (repository) items = await versionItems(repository);
  } catch (error) {
    // The versions can still be typed.
    return askInBox(`The editor's git gave no list of versions: ${error instanceof Error ? error.message : error}.`);
  }
  if (items.length === 0) return askInBox();
  const chosen = await vscode.window.showQuickPick([...items, { label: OTHER }], {
    title: 'Review against…',
    placeHolder: 'Branch, tag or commit to compare the saved files with',
    matchOnDescription: true,
  });
  return chosen?.label === OTHER ? askInBox() : chosen?.version;
}

const askInBox = (why = ''): Thenable<string | undefined> =>
  vscode.window.showInputBox({
    title: 'Review against…',
    prompt: `${why} Branch, tag or commit to compare the saved files with`.trim(),
    value: 'HEAD',
    validateInput: (text) => (/^\s*-|^\s*$/.test(text) ? 'Name a branch, a tag or a commit.' : undefined),
  });

async function gitRepository(folder: vscode.Uri): Promise<GitRepository | undefined> {
  const extension = vscode.extensions.getExtension<{
    getAPI(version: 1): { getRepository(uri: vscode.Uri): GitRepository | null };
  }>('vscode.git');
  if (!extension) return undefined;
  const { getAPI } = extension.isActive ? extension.exports : await extension.activate();
  return getAPI.call(extension.exports, 1).getRepository(folder) ?? undefined;
}

/** Branches first, the current one left out of the front; then remote ones, tags and the latest commits. */
export async function versionItems(repository: GitRepository): Promise<readonly VersionItem[]> {
  const refs = (await repository.getRefs?.({ sort: 'committerdate' })) ?? repository.state.refs ?? [];
  const commits = (await repository.log?.({ maxEntries: 30 })) ?? [];
  const current = repository.state.HEAD?.name;
  const group = (title: string, items: readonly VersionItem[]): readonly VersionItem[] =>
    items.length === 0 ? [] : [{ label: title, kind: vscode.QuickPickItemKind.Separator }, ...items];
  const named = (type: number): readonly VersionItem[] =>
    refs
      .filter((ref) => ref.type === type && ref.name !== undefined)
      .map(({ name, commit }) => ({
        label: name!,
        description: [name === current ? 'where you are' : '', commit?.slice(0, 8) ?? ''].filter(Boolean).join(' · '),
        version: name!,
      }))
      .sort((a, b) => Number(a.label === current) - Number(b.label === current));
  return [
    ...group('branches', named(0)),
    ...group('remote branches', named(1)),
    ...group('tags', named(2)),
    ...group(
      'commits',
      commits.map(({ hash, message }) => ({
        label: message.split('\n')[0]!.slice(0, 80),
        description: hash.slice(0, 8),
        version: hash,
      })),
    ),
  ];
}
