/** Findings as Markdown for a comment: a short summary first, each file's findings folded. Lays out; judges nothing. */
import type { Analysis } from '../analysis';
import type { Finding } from '../build/finding';
import { positionAt } from '../text/lines';
import type { Where } from './findings-json';
import { cut, htmlInComment, markdownCode, markdownSentence, markdownWords } from './markdown-safe';
import { plural, severityWords } from './review-words';

/** What a host takes for one comment, with room to spare. */
export const COMMENT = 60_000;

export function findingsAsMarkdown(analyses: readonly Analysis[], where: Where): string {
  const open = analyses.flatMap(({ findings }) => findings.filter((finding) => finding.accepted === undefined));
  const counts = (['error', 'warning', 'information'] as const)
    .map((severity) => [severity, open.filter((finding) => finding.severity === severity).length] as const)
    .filter(([, count]) => count > 0)
    .map(([severity, count]) =>
      severity === 'information' ? plural(count, 'note') : `${count} ${severityWords[severity]}`,
    );
  const head = `### Dryfit: ${counts.length > 0 ? counts.join(', ') : 'nothing to mend'}\n\n${plural(analyses.length, 'file')} checked.`;
  const blocks = analyses
    .filter(({ findings }) => findings.length > 0)
    .sort((a, b) => worst(a) - worst(b))
    .map((analysis) => fileBlock(analysis, where));
  return `${joined(head, blocks, 'file')}\n`;
}

const order = { error: 0, warning: 1, information: 2 } as const;
const worst = ({ findings }: Analysis): number => Math.min(...findings.map(({ severity }) => order[severity]));

/** As many blocks as a comment holds, and how many more there are. */
export function joined(head: string, blocks: readonly string[], word: string): string {
  const out = [head];
  let length = head.length;
  for (const [i, block] of blocks.entries()) {
    length += block.length + 2;
    if (length > COMMENT) {
      out.push(`And ${plural(blocks.length - i, `more ${word}`)}: the command line shows all.`);
      break;
    }
    out.push(block);
  }
  return out.join('\n\n');
}

function fileBlock({ file, findings }: Analysis, where: Where): string {
  const lines = findings.map((finding) => findingItem(finding, where));
  return folded(
    `<code>${htmlInComment(where.name(file.uri))}</code>: ${plural(findings.length, 'finding')}`,
    lines.join('\n'),
  );
}

/** @param summary HTML that is safe already */
export const folded = (summary: string, markdown: string): string =>
  `<details><summary>${summary}</summary>\n\n${markdown}\n\n</details>`;

export function findingItem(finding: Finding, where: Where, lead = ''): string {
  const lines = where.file(finding.at.file)?.lines ?? [0];
  const at = positionAt(lines, finding.at.span.start).line + 1;
  const accepted = finding.accepted === undefined ? '' : ` Accepted: ${markdownWords(cut(finding.accepted, 500))}`;
  const kind = `${finding.danger ? '⚠ ' : ''}**${markdownWords(severityWords[finding.severity])}**`;
  return `- ${lead}${kind} ${markdownCode(finding.check)}, line ${at}: ${markdownSentence(cut(finding.message, 1500))}${accepted}`;
}
