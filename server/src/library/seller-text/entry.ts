/** Writes proposed fields as an entry of a parts file, with the seller's words behind each value when asked. Decides no value. */
import type { Proposal, Proposed } from './propose';
import type { Written } from './read-value';

export interface EntryOptions {
  readonly id: string;
  readonly today: string;
  /** Spaces before the id. */
  readonly indent?: string;
  /** The seller's words as a comment behind each value. */
  readonly words?: boolean;
}

export function entryText(proposed: Proposed, { id, today, indent = '  ', words = false }: EntryOptions): string {
  const inner = `${indent}  `;
  const lines = [`${indent}${id}:`, `${inner}kind: ${proposed.kind}`];
  if (proposed.name !== undefined) lines.push(`${inner}name: ${scalar(proposed.name)}`);
  const opened = new Set<string>();
  for (const proposal of proposed.fields) {
    const [first = '', second] = proposal.path.split('.');
    if (second === undefined) lines.push(...fieldLines(first, proposal, inner, words));
    else {
      if (!opened.has(first)) lines.push(`${inner}${first}:`);
      opened.add(first);
      lines.push(...fieldLines(second, proposal, `${inner}  `, words));
    }
  }
  lines.push(`${inner}source: seller's page`, `${inner}seen: ${today}`);
  return lines.map((line) => `${line}\n`).join('');
}

function fieldLines(
  key: string,
  { value, words, differs }: Proposal,
  indent: string,
  withWords: boolean,
): readonly string[] {
  const also = differs ? `; also said: ${oneLine(differs.words)}` : '';
  return valueLines(key, value, indent, withWords ? `   # ${oneLine(words)}${also}` : '');
}

function valueLines(key: string, value: Written, indent: string, comment: string): readonly string[] {
  if (typeof value === 'string') return [`${indent}${key}: ${scalar(value)}${comment}`];
  if (isList(value)) return [`${indent}${key}: ${value.join(', ')}${comment}`];
  return [
    `${indent}${key}:${comment}`,
    ...Object.entries(value).flatMap(([name, inner]) => valueLines(name, inner, `${indent}  `, '')),
  ];
}

const isList = (value: Written): value is readonly string[] => Array.isArray(value);

/** A page may hold anything; what could be read as something else is quoted. */
const scalar = (text: string): string =>
  /^[\p{L}\p{N}(+][^\r\n]*$/u.test(text) && !/: |:$| #|\p{C}/u.test(text) && text.trim() === text
    ? text
    : JSON.stringify(text);

/** A comment ends with its line, so nothing pasted may begin a new one. */
export const oneLine = (text: string): string => [...text.replace(/[\s\p{C}]+/gu, ' ').trim()].slice(0, 120).join('');

/** `Brunt 2207 1800 Kv` becomes `brunt-2207-1800-kv`. */
export function idFrom(name: string | undefined, kind: string, taken: (id: string) => boolean): string {
  const plain = (name ?? '')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');
  const base = plain.split('-').filter(Boolean).slice(0, 5).join('-').slice(0, 40).replace(/-+$/, '');
  const start = /^[a-z]/.test(base) ? base : `my-${kind}`;
  for (let n = 1; ; n++) {
    const id = n === 1 ? start : `${start}-${n}`;
    if (!taken(id)) return id;
  }
}
