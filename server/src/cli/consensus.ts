/** `dryfit consensus`: what the reference craft of a class agree on. Chooses class and form; the figures come from the plan. */
import { parseArgs } from 'node:util';
import { referencesIn } from '../analysis';
import { consensusOf } from '../plan/consensus';
import { practisedClasses } from '../plan/consensus-practice';
import { consensusAsJson, consensusAsMarkdown, consensusAsText } from '../report/consensus-report';
import { oneOf } from './check';
import { CannotRun, type Console } from './console';
import { open } from './files';

export function consensus(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
  const format = oneOf('format', values.format ?? 'text', ['text', 'json', 'markdown']);
  const [asked, ...more] = positionals;
  if (more.length > 0) throw new CannotRun('`dryfit consensus` takes one class of craft, or none for all.');
  if (asked !== undefined) oneOf('class', asked, practisedClasses);
  const { workspace } = open(console.cwd, [values.workspace ?? '.'], values);
  const references = referencesIn(workspace);
  const found = [...new Set(references.flatMap((craft) => craft.said.craft?.value ?? []))].sort();
  const classes = asked !== undefined ? [asked] : found.length > 0 ? found : practisedClasses;
  const all = classes.map((one) => consensusOf(one, references));
  if (format === 'json')
    console.out(`${JSON.stringify(all.length === 1 ? consensusAsJson(all[0]!) : all.map(consensusAsJson), null, 2)}\n`);
  else console.out(all.map(format === 'markdown' ? consensusAsMarkdown : consensusAsText).join('\n'));
  return 0;
}

function words(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { format: { type: 'string' }, workspace: { type: 'string' } },
    });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}
