/** `dryfit harness`: the cable between ESC and flight controller, wire by wire. Chooses file and form. */
import { worked } from '../plan/worked';
import { harnessAsMarkdown, harnessAsText, harnessReport } from '../report/harness-report';
import { CannotRun, type Console } from './console';
import { craftIn, openOne } from './one-build';
import { asJson, oneOf, text, wordsOf } from './words';

export function harness(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, { format: text, workspace: text });
  const format = oneOf('format', values.format ?? 'text', ['text', 'json', 'markdown']);
  const known = worked(craftIn(openOne(console, 'harness', positionals, values)), undefined, 'worked.harness');
  if (!known)
    throw new CannotRun(
      'There is no cable to read: it needs the pins of `esc.controller-socket` and `flight-controller.esc-socket`, on boards that are bought apart.',
    );
  const report = harnessReport(known.value);
  const forms = {
    json: () => asJson(report),
    markdown: () => `${harnessAsMarkdown(report)}\n`,
    text: () => harnessAsText(report),
  };
  console.out(forms[format]());
  // What must not be plugged in is a finding here as well.
  return report.danger >= 3 ? 1 : 0;
}
