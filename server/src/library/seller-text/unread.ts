/** Lines of a page that hold a number and that no field was read from, and which fields such a line may state. Proposes no value. */
import type { Field } from '../../vocabulary/field';
import { notOurs } from './labels';
import type { Proposal } from './propose';
import { readAs, type Written } from './read-value';
import { clausesOf, fold, type Pasted, plainSigns } from './text';

/** What a page says about itself, the parcel and the price. */
const ofTheShop =
  /shipping|versand|livraison|exp[eé]di|env[ií]o|spedizione|wysyłk|in stock|auf lager|reviews?\b|return|[€$£]|\bsku\b|% off|warranty|garant|\bworking days|werktag|measure error/i;

export function unreadLines(
  pasted: readonly Pasted[],
  fields: readonly Proposal[],
  name: string | undefined,
): readonly string[] {
  const read = fields.flatMap((one) => [one, ...(one.differs ? [{ ...one, ...one.differs }] : [])]);
  const out: string[] = [];
  for (const one of pasted) {
    if (one.joined || !/\d/.test(one.words) || one.words === name || ofTheShop.test(one.words)) continue;
    if (one.key !== undefined && notOurs.some((label) => fold(label) === one.key)) continue;
    if (one.key !== undefined) {
      if (!read.some(({ words }) => words.includes(one.words) || one.words.includes(words))) out.push(one.words);
      continue;
    }
    const here = read.filter(({ words }) => words.includes(one.words) || one.words.includes(words));
    const taken = new Set(here.flatMap(({ value }) => numbersOf(textsOf(value))));
    for (const clause of one.box ? [one.words] : clausesOf(one.value)) {
      const numbers = numbersOf(clause);
      if (numbers.length > 0 && !numbers.some((number) => taken.has(number))) out.push(clause.trim());
    }
  }
  return [...new Set(out)];
}

const textsOf = (value: Written): string =>
  typeof value === 'string' ? value.replace(/\(seller [\d-]+\)/, '') : Object.values(value).map(textsOf).join(' ');

const numbersOf = (text: string): readonly string[] =>
  [...plainSigns(text).matchAll(/\d+(?:\.\d+)?/g)].map(([digits]) => String(Number(digits)));

/** The first of the lines that holds a figure as this field takes it. */
export function mayStandIn(key: string, field: Field, lines: readonly string[]): string | undefined {
  if (field.is === 'text') return undefined;
  const countable = field.is === 'notation' && (field.notation === 'count' || field.notation === 'flag');
  const name = fold(key.replaceAll('-', ' '));
  return lines.find((line) =>
    countable || field.is === 'table'
      ? fold(line).includes(name)
      : readAs({ key, field, text: line, aside: '', labelled: false }) !== undefined,
  );
}
