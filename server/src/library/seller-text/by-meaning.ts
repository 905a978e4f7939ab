/** Reads fields from statements by what their words are about. Knows no word and no field by name beyond what the tables say. */
import type { Field } from '../../vocabulary/field';
import { no, yes } from './labels';
import { type Way, waysOf } from './meanings';
import { figuresIn, readAs, type Written } from './read-value';
import type { Statement } from './statements';
import { type About, aboutOf } from './stems';
import { fold, plainSigns } from './text';

interface Sought {
  readonly path: string;
  readonly key: string;
  readonly field: Field;
}

export interface Meant<T extends Sought> {
  readonly target: T;
  readonly value: Written;
  readonly words: string;
  readonly sure: Sure;
}

/** How sure a reading is: named by its label, by its own words, or by its unit alone. */
const surest = ['label', 'words', 'unit'] as const;
type Sure = (typeof surest)[number];

/** Words that mean another thing, whatever stands beside them. */
const elsewhere: readonly About[] = [
  'box',
  'pair',
  'advice',
  'thrust',
  'flown',
  'variant',
  'temperature',
  'heat_shrink',
  'other_thing',
];

export const isElsewhere = (text: string): boolean => {
  const about = aboutOf(text);
  return elsewhere.some((one) => about.has(one));
};

/** Whether the words may be about this field and nothing else. */
export function mayBeAbout(kind: string, key: string, text: string): boolean {
  const ways = waysOf(kind, key);
  const may = new Set(ways.flatMap((way) => [...way.may]));
  return ways.length === 0 || ways.some(({ whatever }) => whatever) || [...aboutOf(text)].every((one) => may.has(one));
}

/** @returns what the statements say, the surest first and then in the order of the page */
export function meantBy<T extends Sought>(
  kind: string,
  targets: readonly T[],
  statements: readonly Statement[],
): readonly Meant<T>[] {
  const sought = targets
    .map((target) => ({ target, ways: waysOf(kind, target.key) }))
    .filter(({ ways }) => ways.length);
  const found = new Map<Sure, Meant<T>[]>(surest.map((sure) => [sure, []]));
  for (const statement of statements.flatMap(eachFigure)) {
    const plain = aboutOf(statement.label);
    const bracketed = statement.aside === '' ? plain : aboutOf(`${statement.label} ${statement.aside}`);
    const own = aboutOf(statement.text);
    for (const { target, ways } of sought) {
      if (statement.uncut && !isOfWords(target.field)) continue;
      const sure =
        howSure(ways, plain, own, statement, target.field) ??
        (bracketed === plain ? undefined : howSure(ways, bracketed, own, statement, target.field));
      if (sure === undefined) continue;
      const value = readFrom(kind, target, statement, sure, own);
      // What stands in brackets is said besides.
      const rank = sure === 'label' && statement.inner ? 'words' : sure;
      if (value !== undefined) found.get(rank)!.push({ target, value, words: statement.words, sure: rank });
    }
  }
  return surest.flatMap((sure) => found.get(sure)!);
}

/** Whether words alone are the value: a sentence as a whole may hold more of them than a piece of it. */
export const isOfTerms = (field: Field): boolean =>
  field.is === 'term' || (field.is === 'list' && field.of.is === 'term');

/** Whether a value may need more than one piece of a sentence. */
const isOfWords = (field: Field): boolean =>
  field.is === 'term' ||
  field.is === 'map' ||
  field.is === 'table' ||
  (field.is === 'list' && field.of.is !== 'quantity');

function howSure(
  ways: readonly Way[],
  label: ReadonlySet<About>,
  own: ReadonlySet<About>,
  { text }: Statement,
  field: Field,
): Sure | undefined {
  const all = new Set([...label, ...own]);
  const isMeant = (about: ReadonlySet<About>, way: Way): boolean =>
    way.must.every((one) => about.has(one)) &&
    [...about].every((one) => way.may.has(one) || (way.whatever && !elsewhere.includes(one)));
  const naming = ways.filter(({ must }) => must.length > 0);
  if (label.size > 0 && naming.some((way) => isMeant(label, way))) {
    if (naming.some((way) => isMeant(all, way))) return 'label';
    // What follows the figure only tells more of it.
    if (
      field.is !== 'list' &&
      /^[^\p{L}\d]*(?:ca\.?|about|max\.?)?\s*\d/iu.test(text) &&
      !elsewhere.some((one) => own.has(one))
    )
      return 'label';
  }
  if (naming.some((way) => isMeant(all, way))) return 'words';
  return ways.some((way) => way.must.length === 0 && isMeant(all, way)) ? 'unit' : undefined;
}

/** `55 A continuous / 65 A burst` holds two statements; the words stand behind the figures when it begins with one. */
function eachFigure(statement: Statement): readonly Statement[] {
  if (statement.uncut) return [statement];
  const parts = [...statement.text.matchAll(/(?<![\p{L}\d.])\d+(?:\.\d+)?\s*(a|ma|g|c|w|db|dbi)(?![\p{L}\d])/giu)];
  const units = new Set(parts.map(([, unit]) => unit!.toLowerCase()));
  if (parts.length < 2 || units.size !== 1) return [statement];
  // A range is one figure.
  if (parts.some(({ 0: said, index }) => /^\s*(?:-|to\b|bis\b|à)\s*\d/.test(statement.text.slice(index + said.length))))
    return [statement];
  const leads = /^\W*\d/.test(statement.text);
  const cuts = leads
    ? parts.slice(1).map(({ index }) => index)
    : parts.slice(0, -1).map(({ 0: said, index }) => index + said.length);
  const edges = [0, ...cuts, statement.text.length];
  return edges.slice(1).map((end, i) => {
    const text = statement.text.slice(edges[i], end);
    return { ...statement, text, whole: text };
  });
}

/** What the words alone say of a field that holds no figure. */
const saidByWords: Readonly<Record<string, string>> = { 'flight-controller.osd': 'analog' };

/** Values that need what stands in brackets: a screw, a time, a second figure. */
const wantsWhole: ReadonlySet<string> = new Set(['board-mount', 'motor-mount', 'short-current', 'size', 'shaft']);

function readFrom(
  kind: string,
  { key, field }: Sought,
  said: Statement,
  sure: Sure,
  own: ReadonlySet<About>,
): Written | undefined {
  const leaf = field.is === 'list' ? field.of : field;
  const inWords = saidByWords[`${kind}.${key}`];
  if (inWords !== undefined || (field.is === 'notation' && field.notation === 'flag'))
    return sure === 'unit' ? undefined : mention(said, own, inWords ?? 'yes');
  if (field.is === 'notation' && field.notation === 'count')
    return sure === 'unit' || /\d/.test(said.label) ? undefined : countIn(said.text, key === 'balance-pins');
  // What stands behind the word is a name of its own.
  if (field.is === 'text' && field.family === undefined)
    return sure === 'label' && !/^target\b/i.test(said.whole) && /^[\p{L}\d][^:;]{1,39}$/u.test(said.whole)
      ? said.whole
      : undefined;
  const isRail = field.is === 'map' || field.is === 'table';
  const text = isRail || (leaf.is === 'notation' && wantsWhole.has(leaf.notation)) ? said.whole : said.text;
  if (key === 'draw') {
    const watts = wattsIn(said.whole);
    // Watts alone may be those of the radio.
    if (watts !== undefined || sure === 'unit') return watts;
    const whole = [...said.text.matchAll(/(?<![\d.])(\d+(?:\.\d+)?)\s*W(?![\p{L}\d])/gu)];
    if (whole.length === 1) return `${whole[0]![1]} W`;
  }
  const value = readAs({ key, field, text, aside: said.aside, labelled: sure !== 'unit' });
  if (field.is === 'quantity' && sure !== 'label' && new Set(figuresIn(text, field)).size > 1) return undefined;
  // `2.4G` is a band; only a label makes a capital letter grams.
  if (field.is === 'quantity' && field.dimension === 'mass' && sure === 'unit' && /\d\s*G\b/.test(text))
    return undefined;
  if (field.is === 'list' && leaf.is === 'quantity' && sure === 'unit' && Array.isArray(value) && value.length < 2)
    return undefined;
  if (field.is === 'term' && sure === 'unit' && own.has('without')) return undefined;
  // The word alone may be about either of two things.
  const subject = key === 'ratio' ? /\d:\d/ : /\b(?:pal|ntsc)\b/i;
  if (value === 'switchable' && sure !== 'label' && !subject.test(text)) return undefined;
  if (value === undefined && leaf.is === 'notation' && /^(?:board|motor)-mount$/.test(leaf.notation)) {
    const square = squareIn(said, leaf.notation === 'board-mount');
    return square === undefined || field.is !== 'list' ? square : [square];
  }
  // Two sides without a word may be of anything, but for a board.
  const isSize = leaf.is === 'notation' && leaf.notation === 'size';
  if (isSize && sure === 'unit' && !boards.has(kind) && typeof value === 'string' && !/x.*x/.test(value))
    return undefined;
  if (isBoardPattern(value) !== undefined && sure === 'unit') {
    if (leaf.is === 'notation' && leaf.notation === 'size' && isBoardPattern(value)) return undefined;
    if (leaf.is === 'notation' && leaf.notation === 'board-mount' && !isBoardPattern(value)) return undefined;
  }
  return value;
}

/** `480 mA at 12 V` is a power. */
function wattsIn(text: string): string | undefined {
  const said = /(?<![\d.])(\d+(?:\.\d+)?)\s*(m?A)\s*(?:\p{L}{1,4}|@|\/|,)?\s*(\d+(?:\.\d+)?)\s*V(?![\p{L}\d])/iu.exec(
    text,
  );
  if (!said) return undefined;
  const amps = Number(said[1]) * (/m/i.test(said[2]!) ? 0.001 : 1);
  return `${Number((amps * Number(said[3])).toPrecision(4))} W`;
}

/** `hole spacing 30.5 mm` and `holes on a 20 mm square` tell both sides at once. */
function squareIn({ label, whole }: Statement, board: boolean): string | undefined {
  const text = plainSigns(whole);
  const side = /^\D*?(?<![\d.])(\d{1,2}(?:\.\d)?)\s*mm(?!\s*x)/.exec(text)?.[1];
  const sides = board ? /^(?:16|20|25\.5|26\.5|30\.5)$/ : /^(?:9|12|16|19|25)$/;
  if (side === undefined || !sides.test(side)) return undefined;
  const isSquare =
    aboutOf(`${label} ${whole}`).has('pattern') ||
    /square|quadrat|carr[eé]|kwadrat|cuadrad|quadrad|[čc]tver|vierkant/i.test(whole);
  const screw = / M(\d(?:\.\d)?)(?![\d.]|\s*x)/.exec(` ${text.replace(/[()/,]/g, ' ')}`)?.[1];
  return isSquare ? `${side}x${side}${screw ? ` M${screw}` : ''}` : undefined;
}

const boards: ReadonlySet<string> = new Set(['esc', 'flight-controller', 'video-transmitter', 'receiver', 'capacitor']);

/** Whether two lengths alone are where the holes of a board are; the trade has few such squares. */
function isBoardPattern(value: Written | undefined): boolean | undefined {
  const first = Array.isArray(value) ? value[0] : value;
  const sides = typeof first === 'string' ? /^([\d.]+)x([\d.]+)(?!x)/.exec(first) : null;
  return sides ? sides[1] === sides[2] && /^(?:16|20|25|25\.5|26|26\.5|30|30\.5)$/.test(sides[1]!) : undefined;
}

/** In brackets behind the thing: that it costs extra, or is not there. */
const unsure = /optional|separat|not includ|sold|nicht|en option|opcional|opzional/;

function mention(said: Statement, own: ReadonlySet<About>, meant: string): string | undefined {
  const text = fold(said.text);
  if (no.test(text)) return meant === 'yes' && said.label !== '' ? 'no' : undefined;
  if (own.has('without') || aboutOf(said.label).has('without') || unsure.test(fold(said.whole))) return undefined;
  return yes.test(text) || text !== '' ? meant : undefined;
}

const numerals: readonly RegExp[] = [
  'one single ein eine einzeln un une uno una jeden jedna een um uma'.split(' '),
  'two dual twin double bi zwei zweifach deux due dos dwa dwie dva dve twee dois duas'.split(' '),
  'three triple tri drei dreifach trois tre tres trzy trojj troj tri drie'.split(' '),
  'four quad quadruple vier quatre quattro cuatro cztery ctyri quatro'.split(' '),
  'five penta funf cinq cinque cinco piec pet vijf'.split(' '),
  'six hexa sechs sei seis szesc sest zes'.split(' '),
  'seven sieben sept sette siete siedem sedm zeven sete'.split(' '),
  'eight octa acht huit otto ocho osiem osm oito'.split(' '),
].map((words) => new RegExp(`(?<![a-z])(?:${words.join('|')})(?:(?![a-z])|(?=-?(?:blad|blatt|pale|pala|lop|list)))`));

/** The one number, in digits or in a word. */
function countIn(text: string, ofPins: boolean): string | undefined {
  // The contacts of a plug are no count of anything else.
  const folded = ofPins
    ? fold(text)
    : fold(text).replace(/\d{1,2}\s*-?\s*(?:pin|pol|broch|vias|kontakt|contact)/g, ' ');
  const digits = [
    ...folded.matchAll(
      /(?<![a-z\d.])(\d{1,3})(?![\d.])(?=\s*x?(?:$|[\s,)/-](?!\d)))(?!\s*(?:"|mm|cm|in(?:ch)?\b|zoll|pouce|pulg|poll|cal|palc|v\b|a\b|g\b|k?hz|awg|c\b|s\b))/g,
    ),
  ].map(([, one]) => one!);
  const first = [...new Set(digits)];
  if (first.length > 0) return first.length === 1 ? first[0] : undefined;
  const said = numerals.flatMap((one, i) => (one.test(folded) ? [i + 1] : []));
  // In most of these languages the word for one is also the article.
  const counted = said.length > 1 ? said.filter((number) => number > 1) : said;
  return counted.length === 1 ? String(counted[0]) : undefined;
}
