/** `dryfit order`: the cheapest split over the shops, proved. Reads words, loads the solver, writes the answer; decides no price. */
import { craftsOf } from '../analysis';
import { alternativesFor } from '../report/order-alternatives';
import { orderAsCsv, orderAsJson, orderAsMarkdown, orderAsText } from '../report/order-forms';
import { orderReport, whyNoOrder } from '../report/order-report';
import type { loadSolver as LoadSolver } from '../solver/load';
import { CannotRun, type Console } from './console';
import { open } from './files';
import { benchUri } from './one-build';
import { asJson, flag, oneOf, text, wordsOf } from './words';

export async function order(args: readonly string[], console: Console): Promise<number> {
  const { values: said, positionals } = wordsOf(args, {
    format: text,
    'shops-at-most': text,
    prefer: text,
    without: { type: 'string', multiple: true },
    'keep-from': flag,
    seconds: text,
    bench: text,
    workspace: text,
  });
  const format = oneOf('format', said.format ?? 'text', ['text', 'json', 'markdown', 'csv']);
  if (positionals.length === 0)
    throw new CannotRun('`dryfit order` takes one build file, or those of several friends.');
  const { workspace, asked, uri } = open(console.cwd, positionals, said);
  const bench = benchUri(console.cwd, said.bench, workspace, uri);
  const crafts = asked.flatMap((file) => craftsOf(workspace, workspace.get(uri(file))!, bench));
  if (crafts.length === 0) throw new CannotRun('None of these is a build. Its first line would be `dryfit: build`.');
  const shopsAtMost = whole('shops-at-most', said['shops-at-most']);
  const ids = workspace.shops().flatMap((file) => [...(file.shops?.entries.keys() ?? [])]);
  for (const [option, id] of [['prefer', said.prefer], ...(said.without ?? []).map((one) => ['without', one])] as const)
    if (id !== undefined && !ids.includes(id))
      throw new CannotRun(`--${option}: no shops file has \`${id}\`. Known: ${ids.join(', ') || 'none'}.`);
  const { loadSolver } = (await import('./solver.cjs' as string)) as { loadSolver: typeof LoadSolver };
  const outcome = await orderReport(crafts, await loadSolver(), {
    shopsAtMost,
    prefer: said.prefer,
    without: said.without,
    keepFrom: said['keep-from'],
    seconds: whole('seconds', said.seconds) ?? 20,
  });
  if (!outcome.ok) throw new CannotRun(whyNoOrder[outcome.why]);
  const { report } = outcome;
  const alternatives = () => alternativesFor(workspace, crafts, report, bench);
  const forms = {
    json: () => asJson(orderAsJson(report)),
    csv: () => orderAsCsv(report),
    markdown: () => orderAsMarkdown(report, alternatives()),
    text: () => orderAsText(report, alternatives()),
  };
  console.out(forms[format]());
  const missing = report.missing.filter((one) => one.why !== 'no id');
  if (missing.length > 0 && (format === 'json' || format === 'csv'))
    console.err(`dryfit: not in this order: ${missing.map((one) => `${one.part} (${one.why})`).join(', ')}\n`);
  // An order that lacks something, or breaks the budget, is found as well.
  return missing.length > 0 || report.budget?.kept === false ? 1 : 0;
}

function whole(option: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (!/^[1-9]\d{0,3}$/.test(text)) throw new CannotRun(`--${option} takes a whole number from 1.`);
  return Number(text);
}
