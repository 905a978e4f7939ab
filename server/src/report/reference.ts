/** The reference of all checks, from the checks themselves: what, why, what to do, source, example. Adds no words of its own about any check. */
import { type Check, groups } from '../checks/check';
import { explanationOf } from '../checks/generated/explanations';

const plainExample = (marked: string): string => marked.replace(/^\n/, '').replace(/[«»]/g, '');

/** What is marked in the bad example, with the check's name, as a comment would show it. */
function markedExample(marked: string): string {
  return marked
    .replace(/^\n/, '')
    .split('\n')
    .map((line) => (line.includes('«') ? `${line.replace(/[«»]/g, '')}   # found here` : line))
    .join('\n');
}

export function checkAsJson(check: Check): unknown {
  const { id, title, group, severity, danger, needs, may } = check;
  const { why, remedy, source, bad, good } = explanationOf(check);
  return {
    id,
    title,
    group,
    severity,
    danger: danger ?? null,
    why,
    remedy,
    source,
    needs: Object.values(needs),
    may: Object.values(may),
    bad: plainExample(bad),
    good: plainExample(good),
  };
}

export function checkAsText(check: Check): string {
  const { why, remedy, source, bad, good } = explanationOf(check);
  const danger = check.danger ? `, danger: ${check.danger}` : '';
  return [
    `${check.id}: ${check.title}`,
    `${check.group}, ${check.severity}${danger}`,
    '',
    `Why    ${why}`,
    `Do     ${remedy}`,
    `Source ${source}`,
    `Needs  ${Object.values(check.needs).join(', ')}`,
    '',
    'Found in:',
    markedExample(bad).replace(/^/gm, '  ').trimEnd(),
    '',
    'Not found in:',
    plainExample(good).replace(/^/gm, '  ').trimEnd(),
    '',
  ].join('\n');
}

/** Markdown, each check under a heading of the third level. */
export function referencePage(checks: readonly Check[]): string {
  const out: string[] = [
    '# What Dryfit checks',
    '',
    `${checks.length} checks, by what meets what. Each example is run as a test. A check without one of its facts does not run, and that is reported.`,
    '',
  ];
  for (const group of groups) {
    const own = checks.filter((check) => check.group === group).sort((a, b) => (a.id < b.id ? -1 : 1));
    if (own.length === 0) continue;
    out.push(`## ${group.charAt(0).toUpperCase()}${group.slice(1)}`, '');
    for (const check of own) {
      const { why, remedy, source, bad, good } = explanationOf(check);
      out.push(
        `### ${check.id}`,
        '',
        `**${check.title}.** ${check.severity.charAt(0).toUpperCase()}${check.severity.slice(1)}${check.danger ? `, danger: ${check.danger}` : ''}.`,
        '',
      );
      out.push(
        why,
        '',
        `What to do: ${remedy}`,
        '',
        `Source: ${source}. Compares ${Object.values(check.needs)
          .map((need) => `\`${need}\``)
          .join(', ')}.`,
        '',
      );
      out.push(
        'Found in:',
        '',
        '```yaml',
        ...markedExample(bad).trimEnd().split('\n'),
        '```',
        '',
        'Not found in:',
        '',
        '```yaml',
        ...plainExample(good).trimEnd().split('\n'),
        '```',
        '',
      );
    }
  }
  return `${out.join('\n')}\n`;
}
