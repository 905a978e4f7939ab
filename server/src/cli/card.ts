/** `dryfit card`: the figures of one craft. Chooses file and form; the figures come from the card. */
import { analyse } from '../analysis';
import { cardOf } from '../report/card';
import { cardAsJson } from '../report/card-json';
import { cardAsMarkdown } from '../report/card-markdown';
import { cardAsText } from '../report/card-text';
import { CannotRun, type Console } from './console';
import { noBuild, openOne } from './one-build';
import { asJson, oneOf, text, wordsOf } from './words';

export function card(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, { pack: text, format: text, bench: text, workspace: text });
  const format = oneOf('format', values.format ?? 'text', ['text', 'json', 'markdown']);
  const { workspace, name, address, bench } = openOne(console, 'card', positionals, values);
  const analysis = analyse(workspace, address, { bench, today: console.today })!;
  if (analysis.crafts.length === 0) throw noBuild(name);
  const pack = values.pack;
  if (pack !== undefined && !analysis.crafts.some((craft) => craft.packs.some((one) => one.name === pack)))
    throw new CannotRun(
      `${name} has no pack \`${pack}\`. It has ${analysis.crafts.flatMap((craft) => craft.packs.map((one) => one.name)).join(', ') || 'none'}.`,
    );
  const cards = analysis.crafts.map((craft) => cardOf(craft, analysis, pack));
  const forms = {
    json: () => asJson(cards.length === 1 ? cardAsJson(cards[0]!) : cards.map(cardAsJson)),
    markdown: () => cards.map(cardAsMarkdown).join('\n'),
    text: () => cards.map(cardAsText).join('\n'),
  };
  console.out(forms[format]());
  return 0;
}
