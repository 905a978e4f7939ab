/** `dryfit harness`: the cable between ESC and flight controller, wire by wire. Chooses file and form. */
import { parseArgs } from 'node:util';
import { analyse } from '../analysis';
import { worked } from '../plan/worked';
import { harnessAsMarkdown, harnessAsText, harnessReport } from '../report/harness-report';
import { oneOf } from './check';
import { CannotRun, type Console } from './console';
import { open } from './files';

export function harness(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
  const format = oneOf('format', values.format ?? 'text', ['text', 'json', 'markdown']);
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0) throw new CannotRun('`dryfit harness` takes one build file.');
  const { workspace, asked, uri } = open(console.cwd, [name], values);
  const craft = analyse(workspace, uri(asked[0]!))?.crafts[0];
  if (!craft) throw new CannotRun(`${name} is no build. Its first line would be \`dryfit: build\`.`);
  const known = worked(craft, undefined, 'worked.harness');
  if (!known)
    throw new CannotRun(
      'There is no cable to read: it needs the pins of `esc.controller-socket` and `flight-controller.esc-socket`, on boards that are bought apart.',
    );
  const report = harnessReport(known.value);
  console.out(
    format === 'json'
      ? `${JSON.stringify(report, null, 2)}\n`
      : format === 'markdown'
        ? `${harnessAsMarkdown(report)}\n`
        : harnessAsText(report),
  );
  // What must not be plugged in is a finding here as well.
  return report.danger >= 3 ? 1 : 0;
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
