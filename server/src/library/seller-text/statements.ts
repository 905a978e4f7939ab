/** Cuts lines into statements: a piece of text with one figure or list of figures, and the words that it stands under. Knows no field and no unit. */
import { isShopTalk } from './shop-talk';
import { halfWidth, type Pasted, plainSigns, sentencesOf } from './text';

export interface Statement {
  /** What it stands under: the label, the text before a colon, or before the brackets it stands in. */
  readonly label: string;
  /** Without what stands in brackets. */
  readonly text: string;
  readonly whole: string;
  /** Brackets behind the label: `Weight (g)`. */
  readonly aside: string;
  /** Uncut, with all that stands in it: for words that may be named together, such as `PAL / NTSC`. */
  readonly uncut?: true;
  /** From brackets. */
  readonly inner?: true;
  /** As pasted: the line, or of a paragraph the sentence. */
  readonly words: string;
}

const joint =
  /(?<!\b(?:max|min|ca|dia|incl|inkl|approx|maks|typ|env|resp|no|nr))[.]\s+|[;!?]\s+|,\s+|\s*[|•·;\t]\s*|\s{3,}|\s+[/–—-]\s+|\s+\+\s+|\s+(?:and|und|et|y|e|i|en(?=\s+\d)|oraz|sowie|u|plus|while|but|so|which|because|aber|mais|pero|ale|or|oder|ou|o|lub|nebo)\s+/gi;

/** `25, 200` and `19 mm or 20 mm` are one list; `78 mm, 215 g` is none. */
const figureAtEnd = /(?<![\p{L}\d])\d+(?:\.\d+)?\s*("|[a-zµμω%]{0,4})$/iu;
const figureAtStart =
  /^(?:(?:on|auf|sur|de|di|na|em)\s+)?[~φø]?\s*\d+(?:\.\d+)?(?:\s*(?:mm)?\s*x\s*\d+(?:\.\d+)?)*\s*("|[a-zµμω%]{0,4})(?![a-z\d])/i;

function isOneList(before: string, after: string): boolean {
  // The screw belongs to the pattern beside it.
  if (
    /(?<![\w.])M\d(?:\.\d)?\s*$/.test(before.slice(-8)) &&
    /^\d+(?:\.\d+)?\s*(?:mm)?\s*x\s*\d/.test(after.slice(0, 20))
  )
    return true;
  if (/\d/.test(before.slice(-12)) && /^M\d(?:\.\d)?(?![\w.])/i.test(after.slice(0, 6))) return true;
  // So does its time to a current.
  if (/\dA$/i.test(before.slice(-6).replace(/\s/g, '')) && /^\d{1,3}\s?s(?:ec\w*)?(?![\w])/i.test(after.slice(0, 12)))
    return true;
  const [left, right] = [figureAtEnd.exec(before.slice(-40)), figureAtStart.exec(after.slice(0, 60))];
  if (!left || !right) return false;
  const [a, b] = [left[1]!.toLowerCase(), right[1]!.toLowerCase()];
  return a === '' || a === b;
}

/** Pieces between signs and words that join, but for those in brackets and within a list of figures. */
function piecesOf(text: string): readonly string[] {
  const out: string[] = [];
  let [start, depth, seen] = [0, 0, 0];
  for (const match of text.matchAll(joint)) {
    for (; seen < match.index; seen++) {
      if (text[seen] === '(' || text[seen] === '[') depth++;
      else if (text[seen] === ')' || text[seen] === ']') depth = Math.max(0, depth - 1);
    }
    const end = match.index + match[0].length;
    if (depth > 0 || isOneList(text.slice(start, match.index), text.slice(end))) continue;
    out.push(text.slice(start, match.index));
    start = end;
  }
  out.push(text.slice(start));
  return out.map((piece) => piece.trim()).filter(Boolean);
}

const withoutFigures = (text: string): string => text.replace(/\d[\d.x]*\s*[a-zµμω"%]{0,3}(?![a-z])/gi, ' ').trim();

const bracket = /[([]([^()[\]]*)[)\]]/g;
const named = /^(\D[^:]{1,40}?)\s*:\s+(\S.*)$/;

function cutPiece(piece: string, label: string, aside: string, words: string): readonly Statement[] {
  const inner = named.exec(piece);
  const [under, said] = inner ? [inner[1]!, inner[2]!] : [label, piece];
  const text = said.replace(bracket, ' ').trim();
  const above = withoutFigures(`${under} ${text}`);
  return [
    { label: under, text, whole: said, aside, words },
    // `The bag holds 4 propellers: 2 of each` says something before its sign too.
    ...(inner && /\d/.test(under) ? [{ label, text: under, whole: under, aside, words }] : []),
    ...[...said.matchAll(bracket)].flatMap(([, inside = '']) =>
      piecesOf(inside).map(
        // Behind a figure they say something else; behind words alone they hold the figure.
        (one): Statement => ({
          label: /\d\s*[\p{L}"]/u.test(text) ? '' : above,
          text: one,
          whole: one,
          aside: '',
          inner: true,
          words,
        }),
      ),
    ),
  ];
}

/** Longer ones are sentences, whose words are about many things. */
const longestUncut = 80;

function statementsIn(said: string, label: string, aside: string, words: string): readonly Statement[] {
  const text = plainSigns(halfWidth(said));
  const pieces = piecesOf(text);
  const uncut: readonly Statement[] =
    pieces.length > 1 && text.length <= (label === '' ? longestUncut : 2 * longestUncut)
      ? [{ label, text, whole: text, aside, uncut: true, words }]
      : [];
  return [
    ...uncut,
    ...pieces.flatMap((piece, i) => {
      // `both patterns, 20x20 and 30.5x30.5`: figures without a word of their own stand under the words before them.
      const before = pieces[i - 1];
      const isBare = !/\p{L}{4}/u.test(piece) && (!/\d/.test(before ?? '') || /\d\s*(?:mm|cm)\b/i.test(piece));
      const under = label === '' && before && isBare ? withoutFigures(before) : label;
      return cutPiece(piece, under, aside, words);
    }),
  ];
}

/** A label is a few words without a figure; what stands before a sign otherwise is a statement of its own. */
const isLabel = (key: string): boolean => !/\d/.test(key.replace(/i2c|m\d|@\s*\d+\s*v|(?<=\p{L} )\d$|\b\ds$/giu, ''));

export function statementsOf(one: Pasted): readonly Statement[] {
  // A line of three cells and more is a list, and its first cell no label.
  const isRow = (one.words.match(/\|/g)?.length ?? 0) > 1;
  if (one.key !== undefined && isLabel(one.key) && !isRow)
    return statementsIn(one.value, one.key, one.aside, one.words);
  if (one.joined) return [];
  const line = one.words.replace(/^\s*[^\p{L}\p{N}~φø"(]+\s*/iu, '');
  const sentences = line.length > 100 ? sentencesOf(line) : [line];
  return sentences
    .filter((sentence) => !isShopTalk(sentence))
    .flatMap((sentence) => statementsIn(sentence, '', '', sentence.trim()));
}
