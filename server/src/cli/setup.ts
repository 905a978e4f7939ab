/** `dryfit setup`: what the firmware has to be told, and how the packs are charged. Chooses file and form. */
import { setupAsJson, setupAsMarkdown, setupAsText, setupReport } from '../report/setup-report';
import type { Console } from './console';
import { craftIn, openOne } from './one-build';
import { asJson, oneOf, text, wordsOf } from './words';

export function setup(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, { format: text, bench: text, workspace: text });
  const format = oneOf('format', values.format ?? 'text', ['text', 'markdown', 'json']);
  const report = setupReport(craftIn(openOne(console, 'setup', positionals, values)));
  const forms = {
    json: () => asJson(setupAsJson(report)),
    markdown: () => setupAsMarkdown(report),
    text: () => setupAsText(report),
  };
  console.out(forms[format]());
  return 0;
}
