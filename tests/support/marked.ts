/** Build texts with the value that is found marked «so»: takes the marks out and remembers where they were. Runs nothing. */
import { type Analysis, analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import type { Span } from '../../server/src/text/span';

export function unmark(marked: string): { text: string; spans: Span[] } {
  const spans: Span[] = [];
  let text = '';
  let open = -1;
  for (const char of marked.replace(/^\n/, '')) {
    if (char === '«') open = text.length;
    else if (char === '»') spans.push({ start: open, end: text.length });
    else text += char;
  }
  return { text, spans };
}

/** Several files in one text, each headed by a line `--- name`; a text without such a line is one build. */
export function analyseMarked(
  marked: string,
  uri = 'file:///club/example.dryfit.yaml',
): { analysis: Analysis; spans: Span[]; text: string } {
  const workspace = new Workspace();
  const { text, spans } = unmark(marked);
  workspace.set(uri, text);
  return { analysis: analyse(workspace, uri)!, spans, text };
}
