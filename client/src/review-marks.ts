/** Marks in the text what the reviewed change brought about, behind the line. Gone as soon as the file is edited, as lines then differ. */
import path from 'node:path';
import * as vscode from 'vscode';
import type { ReviewView } from './review-run.ts';

export interface Marks extends vscode.Disposable {
  show(view: ReviewView): void;
}

export function markIntroduced(): Marks {
  const type = vscode.window.createTextEditorDecorationType({
    isWholeLine: true,
    overviewRulerColor: new vscode.ThemeColor('editorOverviewRuler.warningForeground'),
    overviewRulerLane: vscode.OverviewRulerLane.Left,
    after: { margin: '0 0 0 2em', color: new vscode.ThemeColor('editorCodeLens.foreground') },
  });
  const marked = new Map<string, { readonly line: number; readonly words: string }[]>();

  const apply = (editor: vscode.TextEditor): void =>
    editor.setDecorations(
      type,
      (marked.get(editor.document.uri.fsPath) ?? [])
        .filter(({ line }) => line < editor.document.lineCount)
        .map(({ line, words }) => ({
          range: editor.document.lineAt(line).range,
          renderOptions: { after: { contentText: words } },
        })),
    );

  const listeners = [
    vscode.window.onDidChangeVisibleTextEditors((editors) => editors.forEach(apply)),
    vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      if (contentChanges.length === 0 || !marked.delete(document.uri.fsPath)) return;
      vscode.window.visibleTextEditors.filter((editor) => editor.document === document).forEach(apply);
    }),
  ];
  return {
    show({ root, base, introduced }) {
      marked.clear();
      const byLine = new Map<string, string[]>();
      for (const { file, start, check } of introduced) {
        const key = `${start.line} ${path.join(root, file)}`;
        byLine.set(key, [...(byLine.get(key) ?? []), check]);
      }
      for (const [key, checks] of byLine) {
        const at = key.indexOf(' ');
        const file = vscode.Uri.file(key.slice(at + 1)).fsPath;
        const mark = { line: Number(key.slice(0, at)), words: `new since ${base}: ${checks.join(', ')}` };
        marked.set(file, [...(marked.get(file) ?? []), mark]);
      }
      vscode.window.visibleTextEditors.forEach(apply);
    },
    dispose() {
      for (const one of [...listeners, type]) one.dispose();
    },
  };
}
