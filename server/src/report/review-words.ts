/** What happened to a build, in the builder's words, as pieces: ours, and those of a file that each form has to make harmless. Lays out nothing. */
import type { Change } from '../review/change';
import { isOnlyWords, type PartChange } from '../review/library';
import type { PriceChange } from '../review/price';
import type { BuildReview, FileReview, Status } from '../review/review';
import type { Swap } from '../review/swaps';

/** A piece of a sentence: our own words, or what somebody wrote in a file. */
export type Piece = string | { readonly said: string };
export type Sentence = readonly Piece[];

export const said = (text: string): Piece => ({ said: text });

export interface SwapWords {
  readonly line: Sentence;
  readonly fields: readonly Sentence[];
}

/** What a part is called tells no more than its id. */
export const shownFields = ({ fields }: Swap): readonly Change[] =>
  fields.filter((change) => change.own || !isOnlyWords(change.path));

export function swapWords(swap: Swap): SwapWords {
  const { is, head, before, after, part, wasHead } = swap;
  const fields = shownFields(swap).map((change) => fieldWords(change, head));
  const thing = headWords(head);
  const line = (...pieces: Piece[]): SwapWords => ({ line: [...thing, ': ', ...pieces], fields });
  switch (is) {
    case 'swapped':
      return line(
        ...(before === undefined ? ['written in the build'] : [said(before)]),
        ' → ',
        ...(after === undefined ? ['written in the build'] : [said(after)]),
      );
    case 'part renamed':
      return line(
        'the same part, ',
        said(before!),
        ' is called ',
        said(after!),
        ' now',
        ...(fields.length > 0 ? ['; changed in it:'] : []),
      );
    case 'renamed':
      return {
        line: [...headWords(wasHead!), ': is called ', said(head.slice(head.lastIndexOf('.') + 1)), ' now'],
        fields,
      };
    case 'added':
      return line('added', ...(after === undefined ? [] : [', ', said(after)]));
    case 'taken out':
      return { line: [...thing, ': taken out', ...(before === undefined ? [] : [', ', said(before)])], fields: [] };
    case 'from library':
      return line('taken from the parts files as ', said(after!), ' now, every value the same');
    case 'written out':
      return line('written in the build now instead of ', said(before!), ', every value the same');
    case 'lost':
      return line(
        said(before!),
        ' is in no parts file any more',
        ...(after === undefined ? [] : ['; it is called ', said(after), ' there now']),
      );
    case 'changed':
      if (part !== undefined) return line(said(part), ' changed in its parts file');
      return head === '' ? { line: ['the build itself'], fields } : { line: thing, fields };
  }
}

/** `parts.motors` as motors, `packs.main` as the pack main. */
function headWords(head: string): Sentence {
  const [section, second, third] = head.replace(/^\d+: /, '').split('.');
  if (section === 'packs') return ['pack ', said(second ?? '')];
  if (section === 'parts' && third !== undefined) return [`${second!.replace(/s$/, '')} `, said(third)];
  if (section === 'parts') return [/^[a-z-]+$/.test(second ?? '') ? second!.replaceAll('-', ' ') : said(second ?? '')];
  if (section === 'shops') return ['offers in the shops'];
  return section === 'bench' ? ['the bench'] : section === 'settings' ? ['the settings'] : ['the build itself'];
}

function fieldWords({ path, before, after }: Change, head: string): Sentence {
  const own = head !== '' && path.startsWith(`${head}.`) ? path.slice(head.length + 1) : path;
  const name = said(own);
  if (before === null) return [name, ': ', said(after!), ' (not said before)'];
  if (after === null) return [name, ': no longer said (was ', said(before), ')'];
  return [name, ': ', said(before), ' → ', said(after)];
}

export const changeWords = (change: Change): Sentence => fieldWords(change, '');

function partWords(change: PartChange, users: number): SwapWords {
  const used =
    users === 0 ? 'no build changes by it' : `${users} ${users === 1 ? 'build changes' : 'builds change'} by it`;
  const fields = change.fields.map((field) => fieldWords(field, ''));
  const { id, was, kind } = change;
  const what = /^[a-z-]+$/.test(kind) ? kind.replaceAll('-', ' ') : 'part';
  if (change.is === 'added') return { line: [said(id), `: new, a ${what}`], fields: [] };
  if (change.is === 'taken out') return { line: [said(id), `: taken out, a ${what}`], fields: [] };
  if (change.is === 'renamed')
    return {
      line: [said(was!), ': is called ', said(id), ' now', fields.length === 0 ? ', the same in all else' : ''],
      fields,
    };
  if (change.is === 'moved') return { line: [said(id), ': moved here, the same in all'], fields };
  return { line: [said(id), `: changed, ${used}`], fields };
}

/** What happened to the parts of a parts file, those that left it included. */
export const partsWords = (
  { file, parts }: FileReview,
  name: (uri: string) => string,
  users: (id: string) => number,
): readonly SwapWords[] =>
  parts.map((part) =>
    part.file === file
      ? partWords(part, users(part.id))
      : { line: [said(part.was ?? part.id), ': moved to ', said(name(part.file))], fields: [] },
  );

const statusWords: Readonly<Record<Status, string>> = {
  changed: 'changed',
  affected: 'unchanged itself, but what it uses changed',
  added: 'new',
  deleted: 'deleted',
  renamed: 'renamed',
  moved: 'moved',
  formatting: 'only comments, order or layout changed; every value is the same',
};

export function statusSentence(
  { status, from, changes }: Pick<BuildReview | FileReview, 'status' | 'from' | 'changes'>,
  name: (uri: string) => string,
): Sentence {
  if (from === undefined) return [statusWords[status]];
  return [`${statusWords[status]} from `, said(name(from)), changes.length === 0 ? ', every value the same' : ''];
}

export function priceSentence({ currency, before, after, unknown }: PriceChange): Sentence {
  const listed: Piece[] = unknown.slice(0, 4).flatMap((id, i) => (i === 0 ? [said(id)] : [', ', said(id)]));
  if (unknown.length > 0)
    return ['price: the difference is not known, no shop offers ', ...listed, unknown.length > 4 ? ' and others' : ''];
  const difference = after - before;
  if (Math.abs(difference) < 0.005) return ['price: the same'];
  return [
    `price: ${difference > 0 ? '+' : '−'}${Math.abs(difference).toFixed(2)} ${currency} for what differs (${before.toFixed(2)} → ${after.toFixed(2)}), cheapest offers, without shipping`,
  ];
}

export const severityWords = { error: "won't do", warning: 'risky', information: 'note' } as const;

export const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** How it went, in one sentence. */
export function summaryWords(builds: readonly BuildReview[], files: readonly FileReview[]): string {
  const all = [...builds, ...files].map(({ findings }) => findings);
  const introduced = all.flatMap((one) => one.introduced.map(({ finding }) => finding.severity));
  const resolved = all.reduce((sum, one) => sum + one.resolved.length, 0);
  const accepted = all.reduce((sum, one) => sum + one.accepted.length, 0);
  if (builds.length === 0 && files.length === 0) return 'No build file differs.';
  const what =
    builds.length > 0
      ? `${plural(builds.length, 'build')} ${builds.length === 1 ? 'differs' : 'differ'}`
      : 'No build differs';
  const count = (severity: 'error' | 'warning' | 'information'): number =>
    introduced.filter((one) => one === severity).length;
  const kinds = (['error', 'warning', 'information'] as const)
    .filter((severity) => count(severity) > 0)
    .map((severity) =>
      severity === 'information' ? plural(count(severity), 'note') : `${count(severity)} ${severityWords[severity]}`,
    );
  const found =
    introduced.length > 0
      ? `${plural(introduced.length, 'finding')} ${introduced.length === 1 ? 'is' : 'are'} new (${kinds.join(', ')})`
      : 'no finding is new';
  return `${what}: ${found}, ${resolved === 0 ? 'none is' : resolved === 1 ? '1 is' : `${resolved} are`} gone${accepted > 0 ? `, ${accepted} newly accepted` : ''}.`;
}
