/** `dryfit setup`: what the firmware has to be told, and how the packs are charged. Chooses file and form. */
import { parseArgs } from 'node:util';
import { craftsOf } from '../analysis';
import { setupAsJson, setupAsMarkdown, setupAsText, setupReport } from '../report/setup-report';
import { benchUri, oneOf } from './check';
import { CannotRun, type Console } from './console';
import { open } from './files';

export function setup(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
  const format = oneOf('format', values.format ?? 'text', ['text', 'markdown', 'json']);
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0) throw new CannotRun('`dryfit setup` takes one build file.');
  const { workspace, asked, uri } = open(console.cwd, [name], values);
  if (asked.length !== 1) throw new CannotRun('`dryfit setup` takes one build file, not a folder.');
  const bench = values.bench === undefined ? undefined : benchUri(console.cwd, values.bench, workspace, uri);
  const craft = craftsOf(workspace, workspace.get(uri(asked[0]!))!, bench)[0];
  if (!craft) throw new CannotRun(`${name} is no build. Its first line would be \`dryfit: build\`.`);
  const report = setupReport(craft);
  console.out(
    format === 'json'
      ? `${JSON.stringify(setupAsJson(report), null, 2)}\n`
      : format === 'markdown'
        ? setupAsMarkdown(report)
        : setupAsText(report),
  );
  return 0;
}

function words(args: readonly string[]) {
  const text = { type: 'string' } as const;
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { format: text, bench: text, workspace: text },
    });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}
