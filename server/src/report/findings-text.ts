/** Findings for a terminal: file by file, gravest first, each with its value, both sides and the way out. Lays out; judges nothing. */
import type { Analysis } from '../analysis';
import type { Finding } from '../build/finding';
import { positionAt } from '../text/lines';
import type { Where } from './findings-json';

const severityWords = { error: "won't do", warning: 'risky', information: 'note' } as const;

export function findingsAsText(analyses: readonly Analysis[], where: Where): string {
  const blocks = analyses
    .filter((analysis) => analysis.findings.length > 0)
    .map((analysis) => fileBlock(analysis, where));
  return `${[...blocks, summary(analyses)].join('\n')}`;
}

function fileBlock(analysis: Analysis, where: Where): string {
  const lines = [where.name(analysis.file.uri)];
  for (const finding of analysis.findings) lines.push(...findingLines(finding, analysis, where));
  return `${lines.join('\n')}\n`;
}

function findingLines(finding: Finding, analysis: Analysis, where: Where): string[] {
  const at = positionAt(analysis.file.lines, finding.at.span.start);
  const said = analysis.file.text.slice(finding.at.span.start, finding.at.span.end).split(/\r?\n/)[0]!;
  const kind = finding.accepted === undefined ? severityWords[finding.severity] : 'accepted';
  const lines = [
    `   line ${at.line + 1}, \`${said.slice(0, 60)}\`  ${kind}  ${finding.check}`,
    indent(finding.message),
  ];
  for (const related of finding.related) {
    const file = where.file(related.place.file);
    const line = file ? positionAt(file.lines, related.place.span.start).line + 1 : 1;
    const name = related.place.file === finding.at.file ? '' : `${where.name(related.place.file)} `;
    lines.push(`      > ${name}line ${line}: ${related.message}`);
  }
  if (finding.fixes.length > 0)
    lines.push(`      one edit mends it: ${finding.fixes.map((fix) => fix.title).join(', or ')}`);
  if (finding.accepted !== undefined) lines.push(`      accepted: ${finding.accepted}`);
  return lines;
}

function indent(text: string): string {
  const lines: string[] = [];
  let line = '     ';
  for (const word of text.split(' ')) {
    if (line.length + word.length > 104) {
      lines.push(line);
      line = '     ';
    }
    line += ` ${word}`;
  }
  lines.push(line);
  return lines.join('\n');
}

function summary(analyses: readonly Analysis[]): string {
  const all = analyses.flatMap((analysis) => analysis.findings);
  const open = all.filter((finding) => finding.accepted === undefined);
  const count = (severity: Finding['severity']): number =>
    open.filter((finding) => finding.severity === severity).length;
  const ran = new Set(analyses.flatMap((analysis) => analysis.ran)).size;
  const accepted = all.length - open.length;
  const found =
    open.length === 0
      ? 'nothing to mend'
      : `${count('error')} that won't do, ${count('warning')} risky, ${count('information')} ${plural(count('information'), 'note')}`;
  return `${analyses.length} ${plural(analyses.length, 'file')}, ${ran} ${plural(ran, 'check')} compared something: ${found}${accepted > 0 ? `, ${accepted} accepted` : ''}.\n`;
}

const plural = (count: number, word: string): string => (count === 1 ? word : `${word}s`);
