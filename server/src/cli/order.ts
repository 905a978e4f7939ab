/** `dryfit order`: the cheapest split over the shops, proved. Reads words, loads the solver, writes the answer; decides no price. */
import { craftsOf } from '../analysis';
import { alternativeFor } from '../report/order-alternatives';
import { type Alternative, orderAsCsv, orderAsJson, orderAsMarkdown, orderAsText } from '../report/order-forms';
import { orderReport } from '../report/order-report';
import { CannotRun, type Console } from './console';
import { open } from './files';
import { benchUri } from './one-build';
import type { loadSolver as LoadSolver } from './solver';
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
  const outcome = orderReport(crafts, await loadSolver(), {
    shopsAtMost,
    prefer: said.prefer,
    without: said.without,
    keepFrom: said['keep-from'],
    seconds: whole('seconds', said.seconds) ?? 20,
  });
  if (!outcome.ok) throw new CannotRun(whyNot[outcome.why]);
  const { report } = outcome;
  const alternatives = (): readonly Alternative[] =>
    report.missing
      .filter((one) => one.why === 'sold out')
      .map(({ part }) => ({ part, found: firstOf(crafts, (craft) => alternativeFor(workspace, craft, part, bench)) }));
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

function firstOf<T, R>(list: readonly T[], of: (one: T) => R | undefined): R | undefined {
  for (const one of list) {
    const found = of(one);
    if (found !== undefined) return found;
  }
  return undefined;
}

const whyNot = {
  'no-shops': 'This workspace has no shops file with prices to compare. Write one: its first line is `dryfit: shops`.',
  infeasible:
    'No order keeps all rules: minimum orders, weights, shops that send no packs, or the number of shops asked for. Allow one shop more, or add offers.',
  unsolved: 'The order could not be solved in the time given. Allow more with `--seconds 60`.',
} as const;

function whole(option: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (!/^[1-9]\d{0,3}$/.test(text)) throw new CannotRun(`--${option} takes a whole number from 1.`);
  return Number(text);
}
