/** `dryfit explain`: what a check is about, or all of them. Prints what the checks say of themselves. */
import { allChecks } from '../checks/generated/all';
import { checkAsJson, checkAsText, referencePage } from '../report/reference';
import { nearest } from '../text/nearest';
import { CannotRun, type Console } from './console';
import { asJson, oneOf, text, wordsOf } from './words';

export function explain(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, { format: text });
  const format = oneOf('format', values.format ?? 'text', ['text', 'json', 'markdown']);
  const chosen = positionals.map((id) => {
    const found = allChecks.find((check) => check.id === id);
    if (found) return found;
    const near = nearest(
      id,
      allChecks.map((check) => check.id),
    );
    throw new CannotRun(
      `There is no check \`${id}\`.${near ? ` Did you mean \`${near}\`?` : ''} \`dryfit explain\` lists them.`,
    );
  });
  if (format === 'json')
    console.out(
      asJson(chosen.length === 1 ? checkAsJson(chosen[0]!) : (chosen.length > 0 ? chosen : allChecks).map(checkAsJson)),
    );
  else if (format === 'markdown') console.out(referencePage(chosen.length > 0 ? chosen : allChecks));
  else if (chosen.length > 0) console.out(chosen.map(checkAsText).join('\n'));
  else
    console.out(
      `${allChecks.map((check) => `${check.id.padEnd(38)} ${check.severity.padEnd(12)} ${check.title}`).join('\n')}\n`,
    );
  return 0;
}
