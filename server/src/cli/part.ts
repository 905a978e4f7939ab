/** `dryfit part`: text from a seller's page on standard input becomes an entry of a parts file, with what is still missing. Writes no file. */
import { entryText } from '../library/seller-text/entry';
import { kindsMeant } from '../library/seller-text/kind-words';
import { partKinds } from '../library/seller-text/propose';
import { partDraft } from '../report/part-draft';
import { CannotRun, type Console } from './console';
import { openFolder } from './files';
import { asJson, flag, oneOf, text as word, wordsOf } from './words';

/** More than any page; a whole book by mistake is not read. */
const mostCharacters = 200_000;

export function part(args: readonly string[], console: Console): number {
  const { values } = wordsOf(args, { kind: word, id: word, typical: flag, format: word }, false);
  const { id: wanted, typical = false } = values;
  const format = oneOf('format', values.format ?? 'yaml', ['yaml', 'json']);
  const kind = kindOf(values.kind);
  if (wanted !== undefined && !/^[a-z][a-z0-9.-]*$/.test(wanted))
    throw new CannotRun(`\`${wanted}\` is no id; use small letters, digits and hyphens, as in \`brunt-2207-1800\`.`);
  const text = console.in?.() ?? '';
  if (text.trim() === '')
    throw new CannotRun('Nothing came on standard input. Paste the text: `dryfit part --kind motor < page.txt`.');
  if (text.length > mostCharacters)
    throw new CannotRun(`That is more than ${mostCharacters} characters; paste the specifications alone.`);
  const parts = openFolder(console.cwd).parts();
  const draft = partDraft(kind, text, { today: console.today, typical, taken: (one) => parts.has(one) });
  const { proposed, missing, notes } = draft;
  const id = wanted ?? draft.id;
  if (format === 'json') console.out(asJson({ id, ...proposed, missing }));
  else {
    console.out(entryText(proposed, { id, today: console.today, words: true }));
    console.out(notes.map((note) => `  # ${note}\n`).join(''));
  }
  if (wanted !== undefined && parts.has(wanted))
    console.err(
      `dryfit: a part called \`${wanted}\` is in this workspace already; two of one id cannot be told apart.\n`,
    );
  return proposed.fields.length > 0 ? 0 : 1;
}

function kindOf(word: string | undefined): string {
  const meant = word === undefined ? [] : kindsMeant(word);
  if (meant.length === 1) return meant[0]!;
  if (meant.length > 1) throw new CannotRun(`\`${word}\` may be ${meant.join(' or ')}; say which with --kind.`);
  throw new CannotRun(`--kind takes ${partKinds.join(', ')}${word === undefined ? '' : `; not \`${word}\``}.`);
}
