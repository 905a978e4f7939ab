/** `dryfit explain`: what a check is about, or all of them. Prints what the checks say of themselves. */
import { parseArgs } from 'node:util';
import { allChecks } from '../checks/generated/all';
import { checkAsJson, checkAsText, referencePage } from '../report/reference';
import { nearest } from '../text/nearest';
import { oneOf } from './check';
import { CannotRun, type Console } from './console';

export function explain(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
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
      `${JSON.stringify(chosen.length === 1 ? checkAsJson(chosen[0]!) : (chosen.length > 0 ? chosen : allChecks).map(checkAsJson), null, 2)}\n`,
    );
  else if (format === 'markdown') console.out(referencePage(chosen.length > 0 ? chosen : allChecks).text);
  else if (chosen.length > 0) console.out(chosen.map(checkAsText).join('\n'));
  else
    console.out(
      `${allChecks.map((check) => `${check.id.padEnd(38)} ${check.severity.padEnd(12)} ${check.title}`).join('\n')}\n`,
    );
  return 0;
}

function words(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options: { format: { type: 'string' } } });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}
