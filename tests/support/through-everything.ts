/** Sends one text through every feature, as an editor would after each keystroke; anything thrown is the test's failure. */
import { type Analysis, analyse } from '../../server/src/analysis';
import { actions } from '../../server/src/language/actions';
import { complete } from '../../server/src/language/completion';
import { definition } from '../../server/src/language/definition';
import { hover } from '../../server/src/language/hover';
import { diagnosticOf } from '../../server/src/language/protocol';
import { symbols } from '../../server/src/language/symbols';
import type { Workspace } from '../../server/src/library/workspace';

/** @param before of the text before, as an editor has it */
export function throughEverything(
  workspace: Workspace,
  uri: string,
  text: string,
  offset: number,
  before?: Analysis,
): Analysis {
  workspace.set(uri, text);
  const files = { get: (name: string) => workspace.get(name), spelled: (name: string) => name };
  const analysis = analyse(workspace, uri, before ? { before } : {})!;
  for (const finding of analysis.findings) {
    if (finding.check === 'check-crashed') throw new Error(finding.message);
    const { start, end } = diagnosticOf(files, analysis.file, finding).range;
    if (finding.at.span.start < 0 || finding.at.span.end > text.length || start.line > end.line)
      throw new Error(`${finding.check} points outside the file`);
  }
  hover(workspace, analysis, offset);
  complete(workspace, uri, offset);
  definition(workspace, files, uri, offset);
  symbols(analysis.file);
  actions(analysis, files, { start: { line: 0, character: 0 }, end: { line: 1e6, character: 0 } });
  return analysis;
}
