/** Quick fixes for the findings under a range, as edits of as few characters as possible. Makes no finding of its own. */
import { type CodeAction, CodeActionKind, type Range, type TextEdit } from 'vscode-languageserver-types';
import type { Analysis } from '../analysis';
import type { Finding, Fix } from '../build/finding';
import { offsetAt } from '../text/lines';
import { diagnosticOf, type Files, rangeOf } from './protocol';

export function actions(analysis: Analysis, files: Files, range: Range): readonly CodeAction[] {
  const { file } = analysis;
  const start = offsetAt(file.text, file.lines, range.start);
  const end = offsetAt(file.text, file.lines, range.end);
  const touched = analysis.findings.filter((finding) => finding.at.span.start <= end && start <= finding.at.span.end);
  return touched.flatMap((finding) =>
    finding.fixes.map((fix, i) => actionOf(files, analysis, finding, fix, i === 0 && finding.fixes.length === 1)),
  );
}

function actionOf(files: Files, { file }: Analysis, finding: Finding, fix: Fix, preferred: boolean): CodeAction {
  const changes: Record<string, TextEdit[]> = {};
  for (const edit of fix.edits) {
    const target = files.get(edit.file);
    if (!target) continue;
    const uri = files.spelled(edit.file);
    changes[uri] ??= [];
    changes[uri].push({ range: rangeOf(target, edit.span), newText: edit.text });
  }
  return {
    title: fix.title,
    kind: CodeActionKind.QuickFix,
    diagnostics: [diagnosticOf(files, file, finding)],
    isPreferred: preferred,
    edit: { changes },
  };
}
