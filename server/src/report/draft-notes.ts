/** What stands below the draft of a part, line by line: what was not found on the page, and what of the page was not read. Decides nothing. */
import { oneLine } from '../library/seller-text/entry';
import type { Missing } from '../library/seller-text/missing';

/** Of each list, as many as a reader looks at. */
const shown = 12;

export function draftNotes(missing: readonly Missing[], unread: readonly string[]): readonly string[] {
  const unsaid = missing.filter(({ perhaps }) => perhaps === undefined);
  const perhaps = missing.filter((one) => one.perhaps !== undefined);
  return [
    ...(missing.length === 0 ? ['Nothing is missing that a check looks at.'] : []),
    ...listed('Not said on the page, what most checks look at first:', unsaid.map(line)),
    ...listed(
      'Not read, but a line of the page may say it:',
      perhaps.map((one) => `${line(one)}; see "${oneLine(one.perhaps ?? '')}"`),
    ),
    ...listed('Not read:', unread.map(oneLine)),
  ];
}

const line = ({ path, checks, example }: Missing): string =>
  `${path}${example ? ` (as in ${example})` : ''}: ${checks} ${checks === 1 ? 'check' : 'checks'}`;

function listed(heading: string, lines: readonly string[]): readonly string[] {
  if (lines.length === 0) return [];
  const more = lines.length > shown ? [`  and ${lines.length - shown} more`] : [];
  return [heading, ...lines.slice(0, shown).map((text) => `  ${text}`), ...more];
}
