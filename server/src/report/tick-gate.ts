/** The edit that writes a passed gate into a build, with the print of what it vouches for. Touches no other line. */
import type { Craft } from '../build/craft';
import type { Edit } from '../build/finding';
import { kidOf } from '../build/slot';
import { documentAt, type SourceFile } from '../build/source-file';
import { type Gate, gatePrint } from '../plan/assembly-gates';
import { indentOf, lineBreakOf } from '../text/lines';

export function tickEdit(file: SourceFile, craft: Craft, gate: Gate, date: string): Edit {
  const value = `${date} (${gatePrint(craft, gate)})`;
  const said = craft.said.gates?.entries.get(gate);
  if (said) return { file: file.uri, span: said.at.span, text: value };
  const document = documentAt(file, craft.where.span.start);
  const gates = kidOf(document?.slot, 'gates');
  const end = lineBreakOf(file.text);
  const key = gates?.kids[0]?.keySpan;
  const indent = key && indentOf(file.text, key.start);
  // Before the first gate, with its indentation.
  if (indent !== undefined && /^ *$/.test(indent))
    return { file: file.uri, span: { start: key!.start, end: key!.start }, text: `${gate}: ${value}${end}${indent}` };
  const at = document ? Math.min(document.span.end, file.text.length) : file.text.length;
  const before = at === 0 || file.text[at - 1] === '\n' ? '' : end;
  return { file: file.uri, span: { start: at, end: at }, text: `${before}${end}gates:${end}  ${gate}: ${value}${end}` };
}
