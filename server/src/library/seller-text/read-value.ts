/** Reads what a seller wrote as the value of one field, in our notation, or not at all. Never fills in what is not there. */
import { type Notation, readers } from '../../text/notation';
import { readQuantity } from '../../text/quantity';
import { type Dimension, mayBeBare, units } from '../../text/units';
import { type Field, isLeaf, type QuantityField, type TermField } from '../../vocabulary/field';
import { no, sayings, unitWords, yes } from './labels';
import { fold, plainSigns } from './text';

export interface Said {
  readonly key: string;
  readonly field: Field;
  readonly text: string;
  /** The brackets behind the label. */
  readonly aside: string;
  /** Whether the label stands right before the value, so that a bare number or yes may be meant. */
  readonly labelled: boolean;
}

/** Text, list of texts, or a map of texts, as it will stand in the file. */
export type Written = string | readonly string[] | { readonly [key: string]: Written };

export function readAs(said: Said): Written | undefined {
  const { field } = said;
  const text = plainSigns(said.text).replace(
    /\b(?:between|zwischen|entre|tra|między)\s+(\d+(?:\.\d+)?\s*[a-z]{0,5})\s+(?:and|und|et|y|e|i)\s+(?=\d)/gi,
    '$1 - ',
  );
  if (field.is === 'list') return listOf(said, text);
  if (field.is === 'map' && field.fields.voltage && field.fields.current) return rail(text, field.fields);
  if (field.is === 'map' && field.fields.series && field.fields.contacts) return socketIn(text, field.fields);
  if (field.is === 'table' && field.of.is === 'map' && field.of.fields.voltage) return rails(text, field.of.fields);
  return isLeaf(field) ? oneOf(said, text) : undefined;
}

function oneOf(said: Said, text: string): string | undefined {
  const { field } = said;
  if (field.is === 'quantity') return quantitiesIn(text, field, said)[0];
  if (field.is === 'term') return termsIn(said.key, field, text)[0];
  if (field.is === 'text') return sayingOf(said.key, text) ?? addressIn(said.key, text) ?? familyIn(said, text);
  if (field.is !== 'notation') return undefined;
  const found = notationIn(field.notation, text, said);
  return found !== undefined && readers[field.notation](found).ok ? found : undefined;
}

function listOf(said: Said, text: string): readonly string[] | undefined {
  const { field } = said;
  if (field.is !== 'list') return undefined;
  const { of } = field;
  const found =
    of.is === 'term'
      ? termsIn(said.key, of, spread(text))
      : of.is === 'quantity'
        ? quantitiesIn(spread(text), of, said)
        : of.is === 'notation'
          ? text
              .split(
                /\s*[/,;+&]\s*(?=\d)|\s+(?:and|und|et|or|oder|ou|y|o|e|oraz|lub|nebo)\s+(?:(?:on|auf|sur|de|di|na|em)\s+)?(?=\d)/,
              )
              .flatMap((piece) => oneOf({ ...said, field: of }, piece) ?? [])
          : [];
  const unique = [...new Set(of.is === 'notation' && of.notation === 'motor-mount' ? sameScrew(found) : found)];
  return unique.length > 0 ? unique : undefined;
}

/** `16x16 and 19x19 (M3)`: motors of both patterns take the one screw that is named behind them. */
function sameScrew(mounts: readonly string[]): readonly string[] {
  const screws = new Set(mounts.flatMap((one) => / M[\d.]+$/.exec(one)?.[0] ?? []));
  const [screw] = screws;
  return screws.size === 1 && / M/.test(mounts.at(-1) ?? '')
    ? mounts.map((one) => (/ M/.test(one) ? one : one + screw))
    : mounts;
}

const andWord = '(?:and|und|et|y|e|i|oraz|ou|or|o|oder|of|lub|nebo|en)';
/** No two parts of it can take the same space, or a long list without a unit would be tried in every way. */
const listSign = String.raw`(?:\s*[/|,&]\s*(?:${andWord}\s+)?|\s+${andWord}\s+)`;
const between = new RegExp(listSign);
const severalOfOne = new RegExp(
  String.raw`(?<![\d.])(\d+(?:\.\d+)?(?:${listSign}\d+(?:\.\d+)?){1,15})\s*(mW|W|mm|MHz|GHz)\b`,
  'gi',
);

/** `25/200/400 mW` means a unit each, `DShot150 / 300` a name each. */
function spread(text: string): string {
  return (
    text
      // A range has two ends; more are steps.
      .replace(/(?<![\d.-])\d+(?:\s?-\s?\d+){2,15}(?=\s*mW\b)/gi, (steps) => steps.replaceAll('-', '/'))
      .replace(severalOfOne, (_, numbers: string, unit: string) =>
        numbers
          .split(between)
          .map((number) => `${number} ${unit}`)
          .join(', '),
      )
      .replace(
        /(DShot)\s*(\d+(?:(?:\s*[/,&-]\s*|\s*,?\s+(?:and|und|et|y|e|i|a)\s+)\d{3,4})+)/gi,
        (_, name: string, numbers: string) =>
          numbers
            .split(/\D+/)
            .map((number) => `${name}${number}`)
            .join(', '),
      )
  );
}

const number = String.raw`[+-]?\d+(?:\.\d+)?`;
const withUnit = new RegExp(`(?<![\\d.a-z])(${number})\\s*(rpm/v|[a-zµμω]+|["%°])?`, 'gi');

function quantitiesIn(text: string, field: QuantityField, { key, aside, labelled }: Said): readonly string[] {
  const { dimension } = field;
  const known = spellings(dimension);
  // A capital A is no word but a unit.
  const lower = text.replace(/(?<=[\d\p{L}"])\s+(?:to|bis|à|a|do|až|al|tot|até)\s+(?=\d)/gu, ' - ').toLowerCase();
  const all = [...lower.matchAll(withUnit)];
  // The ends of a range are not the value, but for the largest of something.
  const ranged = /^\s*(?:-|to|bis|à)\s*$/;
  const found = all.flatMap(({ 0: whole, 1: digits, 2: unit, index }, i) => {
    const ours = unit === undefined ? undefined : known.get(unit);
    // A side of `19 x 19 x 22 mm` is no length of its own.
    if (dimension === 'length' && /\dx\s*$|\d\s+x\s*$|mm\s*x\s*$/.test(lower.slice(Math.max(0, index - 12), index)))
      return [];
    const [before, after] = [all[i - 1], all[i + 1]];
    const isTop = before && ranged.test(lower.slice(before.index + before[0].length, index));
    const isLow = after?.[2] === unit && ranged.test(lower.slice(index + whole.length, after?.index));
    const stands = isTop ? key === 'largest-propeller' || (before[2] ?? unit) !== unit : !isLow;
    return ours && stands ? [`${digits} ${ours}`] : [];
  });
  if (key === 'charge-limit' && found.length > 1) {
    const most = /max\w*\.?\s*:?\s*(\d+(?:\.\d+)?)\s*c\b|(\d+(?:\.\d+)?)\s*c\s*max/.exec(lower);
    return most ? [`${most[1] ?? most[2]} C`] : [];
  }
  // `120C` and `1750KV` stick to their unit, which the trade writes apart or not at all.
  const [bare, next] = all;
  const alone = !bare || !next || !ranged.test(lower.slice(bare.index + bare[0].length, next.index));
  if (alone && found.length === 0 && bare && labelled && bare[2] === undefined) {
    const unit = known.get(aside.trim().toLowerCase());
    // `1.750` behind "KV" is no 1.75: the trade has none such.
    const thousands = /^\d{1,3}\.\d{3}$/.test(bare[1]!) && mayBeBare(dimension) ? bare[1]!.replace('.', '') : undefined;
    if (thousands !== undefined && !usual(bare[1]!, field)) return [thousands].filter((one) => usual(one, field));
    if (unit) found.push(`${bare[1]} ${unit}`);
    else if (mayBeBare(dimension)) found.push(bare[1]!);
  }
  return found.map((one) => spoken(one, dimension)).filter((one) => usual(one, field));
}

/** All figures of that dimension that a seller of such a thing may mean, as they will be written. */
export const figuresIn = (text: string, field: QuantityField): readonly string[] =>
  quantitiesIn(plainSigns(text), field, { key: '', field, text, aside: '', labelled: false });

/** Whether the text holds a figure of that dimension at all, alone, in a range or among others. */
export const holdsFigure = (text: string, field: QuantityField): boolean =>
  [...plainSigns(text).toLowerCase().matchAll(withUnit)].some(([, digits, unit]) => {
    const ours = unit === undefined ? undefined : spellings(field.dimension).get(unit);
    return ours !== undefined && usual(spoken(`${digits} ${ours}`, field.dimension), field);
  });

const spoken = (text: string, dimension: Dimension): string =>
  mayBeBare(dimension) ? text.replace(/\s+\D+$/, '') : text.replace(/^\+/, '');

function spellings(dimension: Dimension): ReadonlyMap<string, string> {
  const ours = Object.keys(units[dimension]);
  return new Map(ours.flatMap((unit) => (unitWords[unit] ?? []).map((word) => [word, unit] as const)));
}

/** A figure that the trade never has is a misread one. */
function usual(text: string, field: QuantityField): boolean {
  const read = readQuantity(text, field.dimension);
  if (!read.ok) return false;
  const [least, most] = (field.about.usual ?? []).map((bound) => readQuantity(bound, field.dimension));
  return !(least?.ok && most?.ok) || (read.value >= least.value * 0.999 && read.value <= most.value * 1.001);
}

function sayingOf(key: string, text: string): string | undefined {
  const folded = fold(text);
  return Object.entries(sayings[key] ?? {}).find(([, pattern]) => pattern.test(folded))?.[0];
}

/** `LiPo (not LiHV)`: what brackets deny is not said. */
const denied = /[(（][^()（）]*\b(?:no|not|nicht|keine?|pas|non|sin|senza)\b[^()（）]*[)）]/gi;

function termsIn(key: string, field: TermField, page: string): readonly string[] {
  const text = page.replace(denied, ' ');
  const terms = field.terms.map(({ term }) => term);
  const said = sayingOf(key, text);
  if (said !== undefined && terms.includes(said)) return [said];
  const folded = key === 'band' ? bandNames(fold(text)) : fold(text);
  let rest = folded;
  const found: { term: string; at: number }[] = [];
  // The longest first, and what is found is taken out: `RP-SMA plug` holds `SMA plug`.
  for (const term of [...terms].sort((a, b) => b.length - a.length)) {
    const pattern = fold(term)
      .split(/[\s-]+/)
      .map(escaped)
      .join('[\\s-]*');
    // A processor stands in a longer order number.
    const match = new RegExp(
      /^[A-Z]+\d{3}/.test(term) && key === 'mcu' ? pattern : `(?<![a-z0-9])${pattern}(?![a-z0-9])`,
    ).exec(rest);
    // One letter is a word of any language, and `wide x` is no `x`.
    if (!match || (term.length < 2 && folded !== fold(term))) continue;
    found.push({ term, at: match.index });
    rest = rest.slice(0, match.index) + ' '.repeat(match[0].length) + rest.slice(match.index + match[0].length);
  }
  const others = found.filter(({ term }) => term !== 'switchable');
  if (terms.includes('switchable') && others.length > 1) return ['switchable'];
  return found.sort((a, b) => a.at - b.at).map(({ term }) => term);
}

/** A receiver's range as the name of its band; the limits are those of the ITU's regions. */
const bandNames = (folded: string): string =>
  folded
    .replace(/\b24\d\d(?:\.\d+)?(?:\s*(?:mhz)?\s*-\s*24\d\d(?:\.\d+)?)?\s*mhz/g, '2.4 ghz')
    .replace(/\b2\.4\d*(?:\s*-\s*2\.4\d*)?\s*g(?:hz)?\b/g, '2.4 ghz')
    .replace(/\b86[3-9](?:\.\d+)?\s*-\s*8(?:6\d|70)(?:\.\d+)?\s*mhz/g, '868 mhz')
    .replace(/\b90[2-9](?:\.\d+)?\s*-\s*92[0-8](?:\.\d+)?\s*mhz/g, '915 mhz');

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** An address on the bus stands as the chip's makers write it. */
const addressIn = (key: string, text: string): string | undefined =>
  key.endsWith('-address') ? /0x[0-9a-f]{2}\b/i.exec(text)?.[0] : undefined;

/** The name of a family, when it is one word that stands behind its label alone. */
function familyIn({ field, labelled }: Said, text: string): string | undefined {
  if (field.is !== 'text' || field.family === undefined || !labelled) return undefined;
  const word = /^[a-z][a-z0-9-]{2,20}$/i.exec(text.trim().replace(/\.$/, ''));
  // The standard of a picture is no system of its own.
  return word && !/^(?:pal|ntsc|auto)$/i.test(word[0]) ? word[0].toLowerCase() : undefined;
}

function rail(text: string, fields: Readonly<Record<string, Field>>): Written | undefined {
  const pair = pairsIn(text)[0];
  const alone = [...text.matchAll(/(?<![\d.])(\d+(?:\.\d+)?)\s*V\b/gi)];
  if (!pair && alone.length === 1 && fields.voltage && !/\d\s*(?:-|to|bis|à)\s*\d/.test(text))
    return { voltage: `${alone[0]![1]} V` };
  return pair && fields.voltage ? { voltage: `${pair[0]} V`, current: pair[1] } : undefined;
}

function rails(text: string, fields: Readonly<Record<string, Field>>): Written | undefined {
  const pairs = pairsIn(text);
  if (pairs.length === 0 || !fields.current) return undefined;
  return Object.fromEntries(pairs.map(([volts, amps]) => [`${volts}V`, { voltage: `${volts} V`, current: amps }]));
}

const pairsIn = (text: string): readonly (readonly [string, string])[] =>
  // `3A @ 5V`
  /^\D{0,12}\d+(?:\.\d+)?\s*m?A\s*(?:@|at|bei)/i.test(text) ? ampsFirst(text) : voltsFirst(text);

const ampsFirst = (text: string): readonly (readonly [string, string])[] =>
  [...text.matchAll(/(\d+(?:\.\d+)?)\s*(m?A)\s*(?:@|at|bei)\s*(\d+(?:\.\d+)?)\s*V(?:olts?)?\b/gi)].map((match) => [
    match[3]!,
    `${match[1]} ${/m/i.test(match[2]!) ? 'mA' : 'A'}`,
  ]);

const voltsFirst = (text: string): readonly (readonly [string, string])[] =>
  [
    ...text.matchAll(
      /(\d+(?:\.\d+)?)\s*V(?:olts?)?\s*(?:[@/:,(-]|at|bei|a|à)?\s*(?:up to|max\.?|bis zu|hasta|fino a)?\s*(?:\p{L}{1,12}\s+){0,3}(\d+(?:\.\d+)?)\s*(m?A)(?![\p{L}\d])/giu,
    ),
  ].map((match) => [match[1]!, `${match[2]} ${/m/i.test(match[3]!) ? 'mA' : 'A'}`]);

/** `8-pin JST-SH 1.0 mm`; both the family and the number of contacts must be there. */
function socketIn(text: string, fields: Readonly<Record<string, Field>>): Written | undefined {
  const contacts =
    /(?<![\d.])(\d{1,2})\s*-?\s*(?:pins?|p|polig|pol|broches|points|pines|poli|poles|contact\w*|kontakt\w*|polos|pinos|styk\w*|pin[ůy]|kolík\w*|vias|v[íi]as)\b/i.exec(
      text,
    )?.[1];
  const family = /\b(SH|GH|PH|XH|ZH)(?![a-z])/i.exec(text)?.[1]?.toUpperCase();
  const terms = fields.series?.is === 'term' ? fields.series.terms.map(({ term }) => term) : [];
  const series = family && terms.find((term) => term.startsWith(`${family} `));
  return contacts && series ? { series, contacts } : undefined;
}

const range = String.raw`\s*(?:-|/|\.{2,3}|…|to|through|bis|a|à|al|do|až|až do|tot|até)\s*`;

/** What stands before a voltage at which something else was measured. */
const atVoltage = String.raw`(?<!(?:@|\bat|\bsous|\bunder|\bbei|\bpri|\bprzy|\bcon|\ba|(?<![\p{L}])à)\s*\d*\.?\d*)`;

function notationIn(notation: Notation, text: string, { key, aside, labelled }: Said): string | undefined {
  const get = (pattern: RegExp, make: (match: RegExpExecArray) => string | undefined): string | undefined => {
    const match = pattern.exec(text);
    return match ? make(match) : undefined;
  };
  const beside = /^\s*M(\d(?:\.\d)?)\s*$/i.exec(aside)?.[1];
  const screw = (thread: string | undefined): string => (thread || beside ? ` M${thread ?? beside}` : '');
  switch (notation) {
    case 'stator': {
      // Behind its label the stator may be told as two lengths.
      const sides = labelled ? /(?<![\d.])(\d{2})\s*(?:mm)?\s*x\s*(\d{1,2}(?:\.5)?)\s*mm/i.exec(text) : null;
      if (sides) return `${sides[1]}${sides[2]!.replace(/^\d(?=\.|$)/, '0$&')}`;
      return get(/(?<![\d.])(\d{2})(\d{2}(?:\.5)?)(?![\d.]|\s*kv|\s*mah)/i, ([, a, b]) =>
        Number(a) >= 6 && Number(a) <= 60 && Number(b) >= 2 && Number(b) <= 20 ? `${a}${b}` : undefined,
      );
    }
    case 'cells':
      return (
        get(new RegExp(`(?<![\\d.])(\\d{1,2})\\s*S?${range}(\\d{1,2})\\s*S\\b`, 'i'), ([, a, b]) => `${a}S-${b}S`) ??
        get(/(?<![\d.])(\d{1,2})S\b/i, ([, a]) => `${a}S`)
      );
    case 'pack-cells':
      return get(/(?<![\d.])(\d{1,2})S(?:\s*(\d)P)?\b/i, ([, s, p]) => `${s}S${p && p !== '1' ? `${p}P` : ''}`);
    case 'board-mount':
    case 'motor-mount':
      return (
        get(
          /(?<![\w.])M(\d(?:\.\d)?)\s*[/,;]\s*(\d{1,2}(?:\.\d)?)\s*(?:mm)?\s*x\s*(\d{1,2}(?:\.\d)?)(?![\d.])(?!\s*(?:mm)?\s*[x(/,]?\s*M?\d)/i,
          ([, m, a, b]) => `${a}x${b} M${m}`,
        ) ??
        get(
          // The screw stands behind the pattern, not behind another one, and is no shaft.
          /(?<![\d.])(\d{1,2}(?:\.\d)?)\s*(?:mm)?\s*x\s*(\d{1,2}(?:\.\d)?)(?![\d.])\s*(?:mm)?(?:(?:(?!\d\s*x\s*\d|shaft|prop\b|welle|arbre|albero)[^;]){0,60}?\bM(\d(?:\.\d)?)\b(?!\s*(?:shaft|prop|nut|thread|welle|x\s*\d)))?/i,
          ([, a, b, m]) => `${a}x${b}${screw(m)}`,
        )
      );
    case 'screw':
      return get(/\bM(\d(?:\.\d)?)\s*x\s*(\d{1,2})/i, ([, m, length]) => `M${m}x${length}${headIn(text)}`);
    case 'thread':
      return get(/\bM(\d(?:\.\d)?)\b/i, ([, m]) => `M${m}`);
    case 'shaft':
      return (
        get(/\bM(\d)\b/i, ([, m]) => `M${m}`) ??
        (labelled ? get(/(?<![\d.])(\d(?:\.\d)?)\s*mm/i, ([, d]) => `${d} mm`) : undefined)
      );
    case 'gauge':
      return get(/(\d{1,2})\s*(?:#\s*)?AWG|AWG\s*#?\s*(\d{1,2})/i, ([, a, b]) => `${a ?? b} AWG`);
    case 'short-current': {
      const current = get(/(?<![\d.])(\d+(?:\.\d+)?)\s*A\b/i, ([, amps]) => amps);
      // A capital S behind a small number may be cells.
      const time =
        /(?<![\d.])(\d+\s*(?:s|sec|seconds?|sek|sekunden|seg|segundos|secondes?|secondi)|(?:1[5-9]|[2-9]\d|\d{3})S)\b/
          .exec(
            `${text.replace(/(A)\s*\/\s*(\d+)\s*S\b/i, '$1 $2 s')} ${plainSigns(aside)}`.replace(
              /(?<=\d\s*)S(?=[a-z])/g,
              's',
            ),
          )?.[1]
          ?.replace(/\D+$/, '');
      return current === undefined ? undefined : `${current} A${time ? ` for ${time} s` : ''}`;
    }
    case 'supply-range':
      return (
        get(new RegExp(`(?<![\\d.])(\\d{1,2})\\s*S?${range}(\\d{1,2})\\s*S\\b`, 'i'), ([, a, b]) => `${a}S-${b}S`) ??
        get(
          new RegExp(
            `(?<![\\d.])(\\d+(?:\\.\\d+)?)\\s*(?:V(?:olts?)?)?${range}(\\d+(?:\\.\\d+)?)\\s*V(?:olts?)?\\b`,
            'i',
          ),
          ([, a, b]) => `${a} V - ${b} V`,
        ) ??
        get(new RegExp(`(?<![\\d.])${atVoltage}(\\d+(?:\\.\\d+)?)\\s*V(?:olts?)?\\b`, 'iu'), ([, a]) => `${a} V`)
      );
    case 'frequency-range':
      return get(
        new RegExp(`(?<![\\d.])(\\d+(?:\\.\\d+)?)\\s*([MG]Hz)?${range}(\\d+(?:\\.\\d+)?)\\s*([MG])Hz`, 'i'),
        ([, a, u, b, v]) => `${a} ${cased(u ?? `${v}Hz`)} - ${b} ${cased(`${v}Hz`)}`,
      );
    case 'size':
      // Another order than length, width, height is not ours to turn round.
      if (/^\s*(?:(?:w|b|h|t|d)\b|dia)/i.test(aside) || /^\s*[hwbdt]\s*x/i.test(aside)) return undefined;
      return (
        get(
          /\bL\s*(\d+(?:\.\d+)?)\s*(?:mm)?\s*x\s*[BWl]\s*(\d+(?:\.\d+)?)\s*(?:mm)?\s*x\s*H\s*(\d+(?:\.\d+)?)\s*mm/i,
          ([, a, b, c]) => `${a}x${b}x${c} mm`,
        ) ??
        get(
          /[øφ⌀]\s*(\d+(?:\.\d+)?)\s*(?:mm)?\s*x\s*(\d+(?:\.\d+)?)\s*mm(?!\s*x)/i,
          ([, across, high]) => `${across}x${across}x${high} mm`,
        ) ??
        get(
          /(?<![\d.])(\d+(?:\.\d+)?)\s*(?:mm)?\s*x\s*(\d+(?:\.\d+)?)\s*(?:mm)?(?:\s*x\s*(\d+(?:\.\d+)?))?\s*mm/i,
          ([, a, b, c]) => `${a}x${b}${c ? `x${c}` : ''} mm`,
        )
      );
    case 'propeller-size':
      return get(
        /(?<![\d.])(\d(?:\.\d{1,2})?)"?\s*x\s*(\d(?:\.\d{1,2})?)"?\s*x\s*(\d)(?![\d.])/i,
        ([, a, b, c]) => `${a}x${b}x${c}`,
      );
    case 'count':
      return labelled
        ? get(
            key === 'balance-pins'
              ? /(?<![\d.])(\d{1,2})(?![\d.])/
              : /(?<![\d.\p{L}]|\dx\s?)(\d{1,3})(?![\d.]|\s?-?\s?(?:pin|pol)|\s?x\s?\d|\s*(?:mm|v|a|ma|g|c|mw|w|s|k?hz|awg)(?!\p{L}))/iu,
            ([, n]) => n,
          )
        : undefined;
    case 'flag': {
      const folded = fold(text);
      return !labelled ? undefined : no.test(folded) ? 'no' : yes.test(folded) ? 'yes' : undefined;
    }
    default:
      return undefined;
  }
}

/** What a screw's head is called, as far as our notation has it. */
const headIn = (text: string): string =>
  /button|linsen|bombee|alomad|bottone/i.test(text)
    ? ' button'
    : /countersunk|senkkopf|fraisee|avellanad|svasat/i.test(text)
      ? ' countersunk'
      : '';

const cased = (unit: string): string => `${unit[0]!.toUpperCase()}Hz`;
