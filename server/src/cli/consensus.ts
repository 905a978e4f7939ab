/** `dryfit consensus`: what the reference craft of a class agree on. Chooses class and form; the figures come from the plan. */
import { referencesIn } from '../analysis';
import { consensusOf } from '../plan/consensus';
import { practisedClasses } from '../plan/consensus-practice';
import { consensusAsJson, consensusAsMarkdown, consensusAsText } from '../report/consensus-report';
import { CannotRun, type Console } from './console';
import { open } from './files';
import { among, asJson, oneOf, text, wordsOf } from './words';

export function consensus(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, { format: text, workspace: text });
  const format = oneOf('format', values.format ?? 'text', ['text', 'json', 'markdown']);
  const [asked, ...more] = positionals;
  if (more.length > 0) throw new CannotRun('`dryfit consensus` takes one class of craft, or none for all.');
  if (asked !== undefined) among('`dryfit consensus`', asked, practisedClasses);
  const { workspace } = open(console.cwd, [values.workspace ?? '.'], values);
  const references = referencesIn(workspace);
  const found = [...new Set(references.flatMap((craft) => craft.said.craft?.value ?? []))].sort();
  const classes = asked !== undefined ? [asked] : found.length > 0 ? found : practisedClasses;
  const all = classes.map((one) => consensusOf(one, references));
  const forms = {
    json: () => asJson(all.length === 1 ? consensusAsJson(all[0]!) : all.map(consensusAsJson)),
    markdown: () => all.map(consensusAsMarkdown).join('\n'),
    text: () => all.map(consensusAsText).join('\n'),
  };
  console.out(forms[format]());
  return 0;
}
