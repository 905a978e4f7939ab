/** `dryfit part`: text from a seller's page on standard input becomes an entry of a parts file, with what is still missing. Writes no file. */
import { entryText } from '../library/seller-text/entry';
import type { Missing } from '../library/seller-text/missing';
import { partKinds } from '../library/seller-text/propose';
import { partDraft, shownMissing } from '../report/part-draft';
import { CannotRun, type Console } from './console';
import { asJson, flag, oneOf, text as word, wordsOf } from './words';

/** More than any page; a whole book by mistake is not read. */
const mostCharacters = 200_000;

export function part(args: readonly string[], console: Console): number {
  const { values } = wordsOf(args, { kind: word, id: word, typical: flag, format: word }, false);
  const { kind, id: wanted, typical = false } = values;
  const format = oneOf('format', values.format ?? 'yaml', ['yaml', 'json']);
  if (kind === undefined || !partKinds.includes(kind))
    throw new CannotRun(`--kind takes ${partKinds.join(', ')}${kind === undefined ? '' : `; not \`${kind}\``}.`);
  if (wanted !== undefined && !/^[a-z][a-z0-9.-]*$/.test(wanted))
    throw new CannotRun(`\`${wanted}\` is no id; use small letters, digits and hyphens, as in \`brunt-2207-1800\`.`);
  const text = console.in?.() ?? '';
  if (text.trim() === '')
    throw new CannotRun('Nothing came on standard input. Paste the text: `dryfit part --kind motor < page.txt`.');
  if (text.length > mostCharacters)
    throw new CannotRun(`That is more than ${mostCharacters} characters; paste the specifications alone.`);
  const draft = partDraft(kind, text, { today: console.today, typical, taken: () => false });
  const { proposed, missing } = draft;
  const id = wanted ?? draft.id;
  if (format === 'json') console.out(asJson({ id, ...proposed, missing }));
  else {
    console.out(entryText(proposed, { id, today: console.today, words: true }));
    console.out(missingText(missing));
  }
  return proposed.fields.length > 0 ? 0 : 1;
}

function missingText(missing: readonly Missing[]): string {
  if (missing.length === 0) return '  # Nothing is missing that a check looks at.\n';
  const lines = missing
    .slice(0, shownMissing)
    .map(
      ({ path, checks, example }) =>
        `  #   ${path}${example ? ` (as in ${example})` : ''}: ${checks} ${checks === 1 ? 'check' : 'checks'}`,
    );
  const more = missing.length > shownMissing ? [`  #   and ${missing.length - shownMissing} more`] : [];
  return ['  # Not said on the page, what most checks look at first:', ...lines, ...more]
    .map((line) => `${line}\n`)
    .join('');
}
