/** Lines of a page that hold a number, or whose words may name a field, and that no field was read from; and which fields such a line may state. Proposes no value. */
import type { Field } from '../../vocabulary/field';
import { labels, notOurs } from './labels';
import { nameAField } from './meanings';
import { holdsFigure, readAs, type Written } from './read-value';
import { isShopTalk } from './shop-talk';
import { aboutOf } from './stems';
import { clausesOf, fold, type Pasted, plainSigns } from './text';

/** Words of a page with what was read from them. */
export type Heard =
  | { readonly words: string; readonly value: Written }
  /** The label is known; whether the value was read is said by another. */
  | { readonly words: string; readonly labelled: true };

const figure = /(?<![\p{L}\d.])\d+(?:\.\d+)?\s*(?:g|mm|cm|m?a|m?v|m?ah|m?w|c|kv|s|[mg]hz|mω|µf|uf|awg)(?!\p{L})/iu;

/** A longer line without a number is a sentence, which may be about anything. */
const longestStatement = 60;

export function unreadLines(
  kind: string,
  pasted: readonly Pasted[],
  heard: readonly Heard[],
  name: string | undefined,
): readonly string[] {
  const read = heard.filter((one) => 'value' in one);
  const labelled = new Set(heard.filter((one) => 'labelled' in one).map(({ words }) => words));
  const pairs = pasted.filter(({ joined }) => joined);
  const isKnown = ({ key, words, top, box }: Pasted): boolean => {
    if (labelled.has(words)) return true;
    const about = aboutOf(key ?? words);
    return !top && !box && words.length <= longestStatement && !about.has('box') && nameAField(kind, about);
  };
  const out: { readonly text: string; readonly box: boolean }[] = [];
  for (const one of pasted) {
    if (one.joined || one.others || isShopTalk(one.words)) continue;
    if (one.key !== undefined && notOurs.some((label) => fold(label) === one.key)) continue;
    const known = isKnown(one);
    if (!/\d/.test(one.words) && !known) continue;
    // A title says again what the list below it says; prose at the top is no title.
    const title = one.top && !known && !/[.;]\s/.test(one.words);
    const here = title ? read : read.filter(({ words }) => words.includes(one.words) || one.words.includes(words));
    if (one.key !== undefined && !title) {
      if (here.length === 0) out.push({ text: one.words, box: one.box });
      else if (!one.box) out.push(...leftOf(one, here).map((text) => ({ text, box: false })));
      continue;
    }
    // The number of a model is read with its name.
    if (one.words === name && !figure.test(plainSigns(one.words))) continue;
    if (!/\d/.test(one.words)) {
      // A cell by itself is told with the one below it.
      const pair = pairs.find(({ words }) => words.startsWith(`${one.words} `))?.words ?? one.words;
      if (here.length === 0 && !read.some(({ words }) => words.includes(pair) || pair.includes(words)))
        out.push({ text: pair, box: one.box });
      continue;
    }
    const taken = new Set(here.flatMap(({ value }) => numbersOf(textsOf(value))));
    for (const clause of one.box || title ? [one.words] : clausesOf(one.value)) {
      const numbers = numbersOf(clause);
      const said = here.some(({ words }) => words === clause.trim());
      if (numbers.length > 0 && !said && !numbers.some((number) => taken.has(number)))
        out.push({ text: clause.trim(), box: one.box });
    }
  }
  // What comes in the box is least likely to be about the part.
  return [...new Set([...out.filter(({ box }) => !box), ...out.filter(({ box }) => box)].map(({ text }) => text))];
}

/** Of a line that was read in part, what else holds a number; brackets tell more of what stands before them. */
function leftOf(one: Pasted, here: readonly (Heard & { value: Written })[]): readonly string[] {
  const taken = new Set(here.flatMap(({ value }) => numbersOf(textsOf(value))));
  const clauses = clausesOf(one.value.replace(/[([][^()[\]]*[)\]]/g, ' ')).map((clause) => clause.trim());
  const isTaken = (clause: string): boolean => numbersOf(clause).some((number) => taken.has(number));
  // Of a figure that was worked out from others nothing is left.
  if (!clauses.some(isTaken)) return [];
  return clauses.filter((clause) => figure.test(plainSigns(clause)) && !isTaken(clause));
}

const textsOf = (value: Written): string =>
  typeof value === 'string' ? value : Object.values(value).map(textsOf).join(' ');

/** `XT60` holds none: the digits belong to a name. */
const numbersOf = (text: string): readonly string[] =>
  [...plainSigns(text).matchAll(/(?<![\d.]|\p{L}{2}\d*)\d+(?:\.\d+)?/gu)].map(([digits]) => String(Number(digits)));

/** The first of the lines that begins with a label of this field or holds a figure as this field takes it. */
export function mayStandIn(kind: string, key: string, field: Field, lines: readonly string[]): string | undefined {
  const named = [...(labels[`${kind}.${key}`] ?? labels[key] ?? []), key.replaceAll('-', ' ')].map(fold);
  const holds = (line: string): boolean => {
    if (field.is === 'quantity') return holdsFigure(line, field);
    if (field.is === 'list' && field.of.is === 'quantity') return holdsFigure(line, field.of);
    // A bare number and a bare yes may be about anything.
    if (field.is === 'notation' && (field.notation === 'count' || field.notation === 'flag')) return false;
    return readAs({ key, field, text: line, aside: '', labelled: false }) !== undefined;
  };
  return lines.find((line) => {
    const folded = fold(line).replace(/^[^\p{L}\d]+/u, '');
    return (
      holds(line) ||
      (line.length <= longestStatement && nameAField(kind, aboutOf(line), key)) ||
      named.some((label) => folded.startsWith(label) && !/^\p{L}/u.test(folded.slice(label.length)))
    );
  });
}
