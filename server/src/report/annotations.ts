/** Findings as workflow commands, one a line, which a hosted repository shows beside the changed lines. Nothing in a file can become a command. */
import type { Finding } from '../build/finding';
import { positionAt } from '../text/lines';
import type { Where } from './findings-json';
import { cut, visible } from './markdown-safe';
import { isInside } from './sarif';

const commands = { error: 'error', warning: 'warning', information: 'notice' } as const;
const order = { error: 0, warning: 1, information: 2 } as const;

/** Gravest first, as hosts show only the first of each kind. What is accepted and not dangerous is left out. */
export function annotations(findings: readonly Finding[], where: Where): string {
  return findings
    .filter((finding) => finding.accepted === undefined || finding.danger !== undefined)
    .sort((a, b) => order[a.severity] - order[b.severity])
    .map((finding) => `${annotation(finding, where)}\n`)
    .join('');
}

function annotation(finding: Finding, where: Where): string {
  const name = where.name(finding.at.file);
  const lines = where.file(finding.at.file)?.lines ?? [0];
  const [start, end] = [positionAt(lines, finding.at.span.start), positionAt(lines, finding.at.span.end)];
  const oneLine = start.line === end.line && end.character > start.character;
  const properties = [
    ...(isInside(name) ? [`file=${property(name)}`] : []),
    `line=${start.line + 1}`,
    `endLine=${end.line + 1}`,
    // Hosts take columns only within one line.
    ...(oneLine ? [`col=${start.character + 1}`, `endColumn=${end.character + 1}`] : []),
    `title=${property(finding.check)}`,
  ];
  const accepted = finding.accepted === undefined ? '' : ` (Accepted: ${finding.accepted})`;
  return `::${commands[finding.severity]} ${properties.join(',')}::${data(cut(visible(finding.message + accepted), 2000))}`;
}

const data = (text: string): string => text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');

/** What turns colours or reading direction has no place in a log, even if the host then doesn't find the file. */
const property = (text: string): string => data(visible(text)).replaceAll(':', '%3A').replaceAll(',', '%2C');
