/** Cuts pasted text into named values and sentences, and brings its signs and decimal commas to one form. Knows no field. */
import { opensOthers, opensOwn } from './shop-talk';

export interface Pasted {
  /** What stands before the colon, in the second column, or on the line above; folded. Absent in a sentence. */
  readonly key?: string;
  /** The brackets behind the key: `Weight (g)`. */
  readonly aside: string;
  readonly value: string;
  /** The line as it was pasted. */
  readonly words: string;
  /** Among the first lines, where a page names the product. */
  readonly top: boolean;
  /** What comes in the box: other things than the part, with figures of their own. */
  readonly box: boolean;
  /** Two lines read as a name and its value; what is read without a label is read from each by itself. */
  readonly joined?: true;
  /** Under a heading for other goods, or for what buyers wrote. */
  readonly others?: true;
}

/** Small letters without accents and without dots, so that a label is found however it is spelled. */
export const fold = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replaceAll('ß', 'ss')
    .replaceAll('ł', 'l')
    .replaceAll('Ł', 'L')
    .replaceAll('’', "'")
    .toLowerCase()
    .replace(/\.(?=\s|$)/g, '')
    .replace(/\s+/g, ' ')
    .trim();

/** One sign for each meaning, decimal points, no thousands. */
export function plainSigns(text: string): string {
  return (
    text
      .replace(/[\u00a0\u2009\u202f]/g, ' ')
      .replace(/[×✕*]/g, 'x')
      // A tolerance is no value, and may be all of the figure that carries the unit.
      .replace(/(?<=[a-zµμω"°]\s*)(?:±|\+\s*\/\s*-|\+-)\s*\d+(?:[.,]\d+)?\s*(?:[a-zµμω]+\b|["%°])?/gi, '')
      .replace(/(?<=\d)\s*(?:±|\+\s*\/\s*-|\+-)\s*\d+(?:[.,]\d+)?\s*%?/g, '')
      .replace(/(?<=\d)-(?=(?:mm|cm|inch|zoll)\b)/gi, ' ')
      .replace(/\bmill?i[wv]att?(?:s|ow|y|u)?\b/gi, 'mW')
      .replace(/\bmill?iamp(?:s|[eè]res?)?\b/gi, 'mA')
      .replace(/\bmillimet(?:er|re)s?\b/gi, 'mm')
      .replace(/(?<=\d\s*(?:mm)?)\s+by\s+(?=\d)/g, 'x')
      .replace(/(?<=\d\s*(?:mm)?\s*)X(?=\s*\d)/g, 'x')
      .replace(/[–—−~〜～]/g, '-')
      .replace(/[″”“]|''/g, '"')
      .replace(/(\d),(?=\d+(?:,\d+)+)/g, '$1, ')
      // `5 600 à 5 950 MHz`
      .replace(/(?<![\d.,])(\d{1,2}) (\d{3})(?=\s*(?:mah|mhz|kv|mw|µf|uf)\b)/gi, '$1$2')
      .replace(/(?<![\d.,])(\d{1,2}) (\d{3})(?=\s*(?:-|to|bis|à|a|do|al|až|et|and|und|e|y|i)\s*\d{4}\s*mhz)/gi, '$1$2')
      .replace(/(\d{1,3})[.,](\d{3})(?=\s*(?:mah|kv|rpm|mw|µf|uf)\b)/gi, '$1$2')
      .replace(/(\d),(\d)/g, '$1.$2')
  );
}

/** Signs of full width, as eastern keyboards write them, in their plain form. */
export const halfWidth = (text: string): string =>
  text.replace(/[\uff01-\uff5e]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0));

/** Dots or lines that lead the eye go first, for what stands behind them may hold any other sign. */
const separators = [
  /\s*(?:[.·…_]{3,}|…|(?:[.·]\s){3,}[.·]?)\s*/,
  /\t+/,
  /\s*\|\s*/,
  /\s*(?:→|⇒|➔|=>|->)\s*/,
  /\s*:\s+|\s*:$/,
  // Without a space it is a time or a ratio between digits, and an address before a slash.
  /\s*(?:(?<!\d):|:(?!\d))(?!\/)/,
  /\s+=\s+/,
  /\s{2,}/,
  /\s+[–—]\s+/,
];

/** A plain hyphen parts a label from its value where nothing else does, and names from names in a title. */
const hyphen = /\s+-\s+/;

const inTheBox =
  /^(?:package|packing|box|kit|in the box|what's in the box|you (?:will )?(?:receive|get)|included|includes|lieferumfang|im lieferumfang|contenu|contenido|contenuto|nella confezione|w zestawie|zawartosc)(?: (?:list|includes?|included|contains?|contents?|content|du (?:paquet|lot|colis)|del paquete|della confezione|zestawu))*$/;

/** No line of a page is longer; a book pasted as one line is read in pieces, so that none takes long. */
const longest = /.{1,4000}/gsu;

export function cut(text: string): readonly Pasted[] {
  const lines = text
    .split(/\r?\n/)
    .flatMap((line) => line.match(longest) ?? [''])
    .map((line) => line.trim());
  const top = new Set(lines.filter((line) => line !== '').slice(0, 2));
  const out: Pasted[] = [];
  let box = false;
  let others = false;
  for (const words of lines) {
    if (words === '') box = false;
    const line = halfWidth(words)
      .replace(/^(?:[-•·▪►*>★☆●◆■✔✓➤√]+|\d{1,2}[.)])\s+|^\|\s*|\s*\|$/g, '')
      .trim();
    if (/^[\s|:-]*$/.test(line)) continue;
    const pair = pairOf(line, top.has(words));
    const heading = pair.key ?? fold(line).replace(/:$/, '');
    if (inTheBox.test(heading)) box = true;
    const bare = fold(line)
      .replace(/[:!?]+$/, '')
      .replace(/\s*\(\d+\)$/, '')
      .trim();
    if (opensOthers(bare)) others = true;
    else if (opensOwn(bare) || inTheBox.test(heading)) others = false;
    out.push({
      ...pair,
      words,
      top: top.has(words),
      box,
      ...(others || (pair.key !== undefined && pair.value !== '' && opensOthers(pair.key)) ? { others: true } : {}),
    });
    // A heading with its list on the same line is done with it.
    if (inTheBox.test(heading) && pair.key !== undefined && pair.value !== '') box = false;
  }
  return joined(out);
}

function pairOf(line: string, top: boolean): { key?: string; aside: string; value: string } {
  for (const separator of top ? separators : [...separators, hyphen]) {
    const at = separator.exec(line);
    if (!at || at.index === 0 || at.index > 48) continue;
    const [label, value] = [line.slice(0, at.index), line.slice(at.index + at[0].length)];
    const key = label.replace(/[([][^)\]]*[)\]]/g, ' ').replace(/[*]/g, '');
    // A key is a few words; in a sentence the sign is punctuation.
    if (key.trim().split(/\s+/).length > 6 || /[a-zà-ž]{5,}[.!?]\s/i.test(key)) continue;
    // Brackets that open before the sign and close behind it hold it.
    if ((label.match(/[([]/g)?.length ?? 0) > (label.match(/[)\]]/g)?.length ?? 0)) continue;
    const aside = [...label.matchAll(/[([]([^)\]]*)[)\]]/g)].map((match) => match[1]!).join(' ');
    return { key: fold(key), aside, value };
  }
  return { aside: '', value: line };
}

const bracketed = /[([]([^)\]]*)[)\]]/g;

/** A table copied cell by cell has the value on the line below its name. */
function joined(pasted: readonly Pasted[]): readonly Pasted[] {
  return pasted.flatMap((one, i): readonly Pasted[] => {
    const next = pasted[i + 1];
    if (one.key !== undefined && one.value === '' && next && next.key === undefined)
      return [{ ...one, value: next.value, words: `${one.words} ${next.words}`, joined: true }];
    if (one.key === undefined && next?.key === undefined && next && one.value.length < 40)
      return [
        one,
        {
          key: fold(one.value.replace(bracketed, ' ')),
          aside: [...one.value.matchAll(bracketed)].map((match) => match[1]!).join(' '),
          value: next.value,
          words: `${one.words} ${next.words}`,
          top: false,
          box: one.box,
          joined: true,
          ...(one.others ? { others: one.others } : {}),
        },
      ];
    return [one];
  });
}

/** The sentences of a paragraph; a list item or a short line is one by itself. */
export const sentencesOf = (value: string): readonly string[] =>
  value
    .split(/(?<=(?:\p{L}{3}|\d|\)|(?<!\p{L})\p{Lu}\p{Ll}?)[.;!?]+)\s+(?=\p{Lu})/u)
    .filter((sentence) => sentence.trim() !== '');

/** Clauses of a sentence, so that a number is not taken for the word of the next one. */
export const clausesOf = (value: string): readonly string[] =>
  value
    .split(/[.;!?]\s+|,\s+(?!\d)|,\s+(?=\d[^,]*[a-z])|\s+(?:and|und|et|y|e|i|oraz|sowie)\s+|\s*[()]\s*/i)
    .filter((clause) => clause.trim() !== '');
