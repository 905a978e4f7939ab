/** `dryfit delivery`: what came against what the file says, and with --write the measured value in its place with its origin. Measures nothing. */
import { craftsOf } from '../analysis';
import { arrival } from '../plan/delivery';
import { orderNeeds } from '../plan/order-needs';
import { tableAsText } from '../report/table';
import { CannotRun, type Console } from './console';
import { craftIn, openOne } from './one-build';
import { flag, text as word, wordsOf } from './words';
import { writeFile } from './write';

export function delivery(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, { weighed: word, write: flag, workspace: word });
  const [name, ...measured] = positionals;
  if (name === undefined)
    throw new CannotRun('`dryfit delivery` takes one build file, then what was measured: motors.weight="32.4 g".');
  const build = openOne(console, 'delivery', [name], values);
  const { workspace, address } = build;
  const craft = craftIn(build);
  const said = [...measured, ...(values.weighed === undefined ? [] : [`flight.weighed=${values.weighed}`])];
  if (said.length === 0) {
    const rows = orderNeeds(craft).map((need) => [
      '[ ]',
      `${need.need} x ${need.part}`,
      need.facts.weight
        ? `${need.facts.weight.text}${need.facts.weight.origin.word ? ` (${need.facts.weight.origin.word})` : ''}`
        : 'weight not known: weigh it',
      `${need.role}.weight`,
    ]);
    console.out(
      `Count, look, weigh; then \`dryfit delivery ${name} PATH="VALUE" --write\`.\n\n${tableAsText({ heads: ['', 'part', 'the file says', 'path'], rows })}\n`,
    );
    return 0;
  }
  const rows: string[][] = [];
  let differs = false;
  for (const one of said) {
    const at = one.indexOf('=');
    if (at < 1) throw new CannotRun(`\`${one}\` says no value. Write it as in motors.weight="32.4 g".`);
    // Each edit is made on the text as the one before left it.
    const file = workspace.get(address)!;
    const found = arrival(file, craftsOf(workspace, file)[0]!, one.slice(0, at), one.slice(at + 1), console.today);
    if (!found.ok) throw new CannotRun(found.why);
    const { arrived } = found;
    const percent =
      arrived.off === undefined ? '' : `${arrived.off >= 0 ? '+' : ''}${(arrived.off * 100).toFixed(1)} %`;
    if (
      arrived.off === undefined
        ? arrived.expected !== undefined && arrived.expected !== arrived.came
        : Math.abs(arrived.off) > 0.05
    )
      differs = true;
    rows.push([arrived.path, arrived.expected ?? 'nothing said', arrived.came, percent]);
    const { span, text } = arrived.edit;
    workspace.set(address, file.text.slice(0, span.start) + text + file.text.slice(span.end));
  }
  if (values.write) writeFile(console, build.file, workspace.get(address)!.text);
  console.out(
    `${tableAsText({ heads: ['', 'the file said', 'came', 'differs by'], rows })}\n${values.write ? '  Written.' : '  Nothing written; add --write.'}\n`,
  );
  return differs ? 1 : 0;
}
