/** The older version's files, read-only, for the side that is no longer on disk. Holds what the latest review brought; fetches nothing. */
import * as vscode from 'vscode';

const scheme = 'dryfit-before';

export const baseUri = (file: string): vscode.Uri => vscode.Uri.from({ scheme, path: `/${file}` });

export interface BaseTexts extends vscode.Disposable {
  show(texts: Readonly<Record<string, string>>): void;
}

export function registerBaseTexts(): BaseTexts {
  const changed = new vscode.EventEmitter<vscode.Uri>();
  let known: Readonly<Record<string, string>> = {};
  const provider = vscode.workspace.registerTextDocumentContentProvider(scheme, {
    onDidChange: changed.event,
    provideTextDocumentContent: ({ path }) => known[path.slice(1)] ?? '',
  });
  return {
    show(texts) {
      const before = known;
      known = texts;
      for (const file of new Set([...Object.keys(before), ...Object.keys(texts)])) changed.fire(baseUri(file));
    },
    dispose() {
      provider.dispose();
      changed.dispose();
    },
  };
}
