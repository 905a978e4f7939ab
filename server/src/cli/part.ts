/** `dryfit part`: text from a seller's page on standard input becomes an entry of a parts file, with what is still missing. Writes no file. */
import { parseArgs } from 'node:util';
import { allChecks } from '../checks/generated/all';
import { entryText, idFrom } from '../library/seller-text/entry';
import { missingFields } from '../library/seller-text/missing';
import { fieldsOfKind, partKinds, proposeFields } from '../library/seller-text/propose';
import { withTypical } from '../library/seller-text/typical';
import { restsOn } from '../plan/worked';
import { CannotRun, type Console } from './console';

/** More than any page; a whole book by mistake is not read. */
const mostCharacters = 200_000;
const shownMissing = 12;

export function part(args: readonly string[], console: Console): number {
  const { kind, id: wanted, typical, format = 'yaml' } = words(args);
  if (kind === undefined || !partKinds.includes(kind))
    throw new CannotRun(`--kind takes ${partKinds.join(', ')}${kind === undefined ? '' : `; not \`${kind}\``}.`);
  if (format !== 'yaml' && format !== 'json') throw new CannotRun(`--format takes yaml, json; not \`${format}\`.`);
  if (wanted !== undefined && !/^[a-z][a-z0-9.-]*$/.test(wanted))
    throw new CannotRun(`\`${wanted}\` is no id; use small letters, digits and hyphens, as in \`brunt-2207-1800\`.`);
  const text = console.in?.() ?? '';
  if (text.trim() === '')
    throw new CannotRun('Nothing came on standard input. Paste the text: `dryfit part --kind motor < page.txt`.');
  if (text.length > mostCharacters)
    throw new CannotRun(`That is more than ${mostCharacters} characters; paste the specifications alone.`);
  const read = proposeFields(kind, text, console.today);
  const proposed = typical ? withTypical(read, Object.keys(fieldsOfKind(kind)!.fields)) : read;
  const id = wanted ?? idFrom(proposed.name, kind, () => false);
  const missing = missingFields(proposed, allChecks, restsOn);
  if (format === 'json') console.out(`${JSON.stringify({ id, ...proposed, missing }, null, 2)}\n`);
  else {
    console.out(entryText(proposed, { id, today: console.today, words: true }));
    console.out(missingText(missing));
  }
  return proposed.fields.length > 0 ? 0 : 1;
}

function missingText(missing: ReturnType<typeof missingFields>): string {
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

function words(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        kind: { type: 'string' },
        id: { type: 'string' },
        typical: { type: 'boolean' },
        format: { type: 'string' },
      },
    }).values;
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}
