/** `dryfit card`: the figures of one craft. Chooses file and form; the figures come from the card. */
import { parseArgs } from 'node:util';
import { analyse } from '../analysis';
import { cardOf } from '../report/card';
import { cardAsJson } from '../report/card-json';
import { cardAsMarkdown } from '../report/card-markdown';
import { cardAsText } from '../report/card-text';
import { benchUri, oneOf } from './check';
import { CannotRun, type Console } from './console';
import { open } from './files';

export function card(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
  const format = oneOf('format', values.format ?? 'text', ['text', 'json', 'markdown']);
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0) throw new CannotRun('`dryfit card` takes one build file.');
  const { workspace, asked, uri } = open(console.cwd, [name], values);
  if (asked.length !== 1) throw new CannotRun('`dryfit card` takes one build file, not a folder.');
  const bench = values.bench === undefined ? undefined : benchUri(console.cwd, values.bench, workspace, uri);
  const analysis = analyse(workspace, uri(asked[0]!), { bench, today: console.today })!;
  if (analysis.crafts.length === 0)
    throw new CannotRun(`${name} is no build, so it has no figures. Its first line would be \`dryfit: build\`.`);
  const pack = values.pack;
  if (pack !== undefined && !analysis.crafts.some((craft) => craft.packs.some((one) => one.name === pack)))
    throw new CannotRun(
      `${name} has no pack \`${pack}\`. It has ${analysis.crafts.flatMap((craft) => craft.packs.map((one) => one.name)).join(', ') || 'none'}.`,
    );
  const cards = analysis.crafts.map((craft) => cardOf(craft, analysis, pack));
  if (format === 'json')
    console.out(`${JSON.stringify(cards.length === 1 ? cardAsJson(cards[0]!) : cards.map(cardAsJson), null, 2)}\n`);
  else console.out(cards.map(format === 'markdown' ? cardAsMarkdown : cardAsText).join('\n'));
  return 0;
}

function words(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        pack: { type: 'string' },
        format: { type: 'string' },
        bench: { type: 'string' },
        workspace: { type: 'string' },
      },
    });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}
