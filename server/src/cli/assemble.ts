/** `dryfit assemble`: the assembly plan of one build, and `--tick` to write a passed gate into it. Plans nothing itself. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { craftsOf } from '../analysis';
import { type Gate, gateNames } from '../plan/assembly-gates';
import { assemblyAsJson, assemblyAsMarkdown, assemblyAsText, assemblyReport } from '../report/assembly-report';
import { tickEdit } from '../report/tick-gate';
import { benchUri, oneOf } from './check';
import { CannotRun, type Console } from './console';
import { open } from './files';

export function assemble(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
  const format = oneOf('format', values.format ?? 'text', ['text', 'markdown', 'json']);
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0) throw new CannotRun('`dryfit assemble` takes one build file.');
  const { workspace, asked, uri } = open(console.cwd, [name], values);
  if (asked.length !== 1) throw new CannotRun('`dryfit assemble` takes one build file, not a folder.');
  const bench = values.bench === undefined ? undefined : benchUri(console.cwd, values.bench, workspace, uri);
  const file = workspace.get(uri(asked[0]!))!;
  const craft = craftsOf(workspace, file, bench)[0];
  if (!craft) throw new CannotRun(`${name} is no build. Its first line would be \`dryfit: build\`.`);
  if (values.tick !== undefined) {
    const gate = oneOf('tick', values.tick, gateNames) as Gate;
    const { span, text } = tickEdit(file, craft, gate, console.today);
    writeFileSync(asked[0]!, file.text.slice(0, span.start) + text + file.text.slice(span.end));
    console.out(`Gate ${gate} of ${craft.said.name?.value ?? name} passed on ${console.today}.\n`);
    return 0;
  }
  const report = assemblyReport(craft);
  console.out(
    format === 'json'
      ? `${JSON.stringify(assemblyAsJson(report), null, 2)}\n`
      : format === 'markdown'
        ? assemblyAsMarkdown(report)
        : assemblyAsText(report),
  );
  return 0;
}

function words(args: readonly string[]) {
  const text = { type: 'string' } as const;
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { format: text, tick: text, bench: text, workspace: text },
    });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}
