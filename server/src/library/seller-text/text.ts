/** Cuts pasted text into named values and sentences, and brings its signs and decimal commas to one form. Knows no field. */

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
  return text
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replace(/[×✕*]/g, 'x')
    .replace(/(?<=\d\s*(?:mm)?\s*)X(?=\s*\d)/g, 'x')
    .replace(/[–—−~〜～]/g, '-')
    .replace(/[″”“]|''/g, '"')
    .replace(/(\d),(?=\d+(?:,\d+)+)/g, '$1, ')
    .replace(/(\d{1,3})[.,](\d{3})(?=\s*(?:mah|kv|rpm|mw|µf|uf)\b)/gi, '$1$2')
    .replace(/(\d),(\d)/g, '$1.$2');
}

const separators = [/\t+/, /\s*\|\s*/, /\s*(?::|：)\s+|\s*[:：]$/, /\s+=\s+/, /\s{2,}/, /\s+[–—]\s+/];

export function cut(text: string): readonly Pasted[] {
  const lines = text.split(/\r?\n/).map((line) => line.trim());
  const filled = lines.filter((line) => line !== '');
  const top = new Set(filled.slice(0, 2));
  const out: Pasted[] = [];
  for (const words of filled) {
    const line = words.replace(/^[-•·▪►*>]\s+|^\|\s*|\s*\|$/g, '');
    if (/^[\s|:-]*$/.test(line)) continue;
    out.push({ ...pairOf(line), words, top: top.has(words) });
  }
  return joined(out);
}

function pairOf(line: string): { key?: string; aside: string; value: string } {
  for (const separator of separators) {
    const at = separator.exec(line);
    if (!at || at.index === 0 || at.index > 48) continue;
    const [key, value] = [line.slice(0, at.index), line.slice(at.index + at[0].length)];
    // A key is a few words; in a sentence the sign is punctuation.
    if (key.split(/\s+/).length > 6 || /[a-zà-ž]{5,}[.!?]\s/i.test(key)) continue;
    const aside = [...key.matchAll(/[([]([^)\]]*)[)\]]/g)].map((match) => match[1]!).join(' ');
    return { key: fold(key.replace(/[([][^)\]]*[)\]]/g, ' ').replace(/[*]/g, '')), aside, value };
  }
  return { aside: '', value: line };
}

/** A table copied cell by cell has the value on the line below its name. */
function joined(pasted: readonly Pasted[]): readonly Pasted[] {
  return pasted.flatMap((one, i) => {
    const next = pasted[i + 1];
    if (one.key !== undefined && one.value === '' && next && next.key === undefined)
      return [{ ...one, value: next.value, words: `${one.words} ${next.words}` }];
    if (one.key === undefined && next?.key === undefined && next && one.value.length < 40)
      return [
        one,
        { key: fold(one.value), aside: '', value: next.value, words: `${one.words} ${next.words}`, top: false },
      ];
    return [one];
  });
}

/** Clauses of a sentence, so that a number is not taken for the word of the next one. */
export const clausesOf = (value: string): readonly string[] =>
  value
    .split(/[.;!?]\s+|,\s+(?!\d)|,\s+(?=\d[^,]*[a-z])|\s+(?:and|und|et|y|e|i|oraz|sowie)\s+|\s*[()]\s*/i)
    .filter((clause) => clause.trim() !== '');
