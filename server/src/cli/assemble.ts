/** `dryfit assemble`: the assembly plan of one build, and `--tick` to write a passed gate into it. Plans nothing itself. */
import { gateNames } from '../plan/assembly-gates';
import { assemblyAsJson, assemblyAsMarkdown, assemblyAsText, assemblyReport } from '../report/assembly-report';
import { tickEdit } from '../report/tick-gate';
import type { Console } from './console';
import { craftIn, openOne } from './one-build';
import { asJson, oneOf, text, wordsOf } from './words';
import { writeFile } from './write';

export function assemble(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, { format: text, tick: text, bench: text, workspace: text });
  const format = oneOf('format', values.format ?? 'text', ['text', 'markdown', 'json']);
  const build = openOne(console, 'assemble', positionals, values);
  const craft = craftIn(build);
  if (values.tick !== undefined) {
    const gate = oneOf('tick', values.tick, gateNames);
    const file = build.workspace.get(build.address)!;
    const { span, text } = tickEdit(file, craft, gate, console.today);
    writeFile(console, build.file, file.text.slice(0, span.start) + text + file.text.slice(span.end));
    console.out(`Gate ${gate} of ${craft.said.name?.value ?? build.name} passed on ${console.today}.\n`);
    return 0;
  }
  const report = assemblyReport(craft);
  const forms = {
    json: () => asJson(assemblyAsJson(report)),
    markdown: () => assemblyAsMarkdown(report),
    text: () => assemblyAsText(report),
  };
  console.out(forms[format]());
  return 0;
}
