/** Figures that stand without a label, where the unit and the words beside them leave one meaning for that kind of part. Reads no value itself: what it finds goes through the reader of the field. */
import { plainSigns } from './text';

type Place = 'text' | 'box';

export interface Rule {
  readonly field: string;
  readonly pattern: RegExp;
  /** What the match says, in words that the reader of the field knows; the match itself when not said. */
  readonly as?: (match: RegExpExecArray) => string;
  /** Words that turn the meaning. */
  readonly unless?: RegExp;
  readonly places?: readonly Place[];
}

const withoutIt = /\b(?:without|no|not|ohne|sans|sin|senza|bez|optional|required|recommended|separately)\b/i;
const seconds = String.raw`(?:s|sec|secs|seconds?|sek|sekunden|seg|segundos|secondes?|secondi)\b`;
const pattern = String.raw`(?<![\d.])(\d{1,2}(?:\.\d)?)\s*(?:mm)?\s*x\s*\1(?![\d.])\s*(?:mm)?(?!\s*x)`;

const weight: Rule = {
  field: 'weight',
  pattern:
    /^(?:~|about|only|just|approx\.?|ca\.?|nur|env\.?)?\s*(\d+(?:\.\d+)?)\s*(?:g|grams?|gramm|grammes?)(?:\s+each)?\.?$/i,
  as: ([, grams]) => `${grams} g`,
  // A band, as in `2.4G`.
  unless: /\dG$/,
};

const outside: Rule = {
  field: 'outside',
  pattern:
    /(?<![\d.x])(\d+(?:\.\d+)?)\s*(?:mm)?\s*x\s*(\d+(?:\.\d+)?)\s*mm\s*,?\s*(?:and|only|just|und|nur|et|y)?\s*(?:only|just|nur)?\s*(\d+(?:\.\d+)?)\s*mm\s*(?:high|tall|thick|hoch|dick|de haut|d'épaisseur|de alto|di altezza)/i,
  as: ([, length, width, height]) => `${length}x${width}x${height} mm`,
};

const mount: Rule = {
  field: 'mount',
  pattern: new RegExp(
    `${pattern}(?=\\s*(?:\\w+\\s+){0,2}(?:mount|pattern|hole|bolt|loch|for M\\d|M\\d|with M\\d))[^.;]{0,60}`,
    'i',
  ),
};

const hole: Rule = {
  field: 'hole',
  pattern: /(?<![\d.])(\d(?:\.\d)?)\s*mm\s*(?:mounting\s+)?(?:holes?|löcher|bohrungen|trous|agujeros|fori|otwory)\b/i,
  as: ([, across]) => `${across} mm`,
};

const grommets: Rule = {
  field: 'grommets',
  pattern:
    /\bgrommets?\b|shock (?:ball|pad|absor)|damping (?:ball|ring)|silicone (?:ball|damper|ring)|silikon(?:tüllen|kugel)|bagues? silicone|antivibra|amortigua|rubber damper|ammortizz|tłumik|gumk|silentblok|gummitüllen|gummidämpfer|silentblocs?|gommini/i,
  as: () => 'yes',
  unless: withoutIt,
  places: ['text', 'box'],
};

const protocols: Rule = {
  field: 'protocols',
  pattern: /\b(?:DShot\s*\d{3,4}(?:(?:\s*[/,&]\s*|\s*,?\s+(?:and|und|et|y|e|i|a)\s+)(?:DShot\s*)?\d{3,4})*)/i,
};

const cellRange = (field: string): Rule => ({
  field,
  pattern: /(?<![\d.])\d{1,2}\s*S?\s*(?:-|to|bis|à)\s*\d{1,2}\s*S\b/i,
});

const voltageRange: Rule = {
  field: 'supply',
  pattern:
    /(?<![\d.])\d+(?:\.\d+)?\s*(?:V(?:olts?)?)?\s*(?:-|to|bis|à|a|do|až|tot|até)\s*\d+(?:\.\d+)?\s*V(?:olts?)?\b|\b(?:between|zwischen|entre|tra)\s+\d+(?:\.\d+)?\s*(?:V(?:olts?)?)?\s+(?:and|und|et|y|e)\s+\d+(?:\.\d+)?\s*V(?:olts?)?\b/i,
  unless: /\b(?:output|adjustable|regulat\w*|bec|ausgang|sortie|salida|uscita|storage|signal)\b/i,
};

const rules: Readonly<Record<string, readonly Rule[]>> = {
  frame: [
    weight,
    {
      field: 'wheelbase',
      pattern:
        /(?<![\d.x])(\d{2,3})\s*mm\s+(?:true|wide|stretched|squashed|symmetric(?:al)?|square|echt\w*|vrai|vero)?[ -]?(?:x|h|deadcat|dead-cat)(?![\w])|(?<![\d.x])(\d{2,3})\s*mm\s+(?:class|wheelbase|diagonal|motor[ -]to[ -]motor)/i,
      as: ([, shaped, named]) => `${shaped ?? named} mm`,
    },
    { field: 'geometry', pattern: /\b(?:true|symmetric(?:al)?|square)[ -]x\b/i, as: () => 'x' },
    {
      field: 'largest-propeller',
      pattern:
        /(?:up to|max\.?|bis|jusqu'à|hasta|fino a)\s*(\d{1,2}(?:\.\d+)?)\s*(?:"|-?inch(?:es)?|in|zoll)\s*(?:props?|propellers?|hélices?|eliche|śmigła)\b/i,
      as: ([, inches]) => `${inches} in`,
    },
  ],
  motor: [
    weight,
    {
      field: 'screws',
      pattern:
        /(?<![\w.])\d{1,2}\s*x\s*(M\d(?:\.\d)?)\s*x\s*(\d{1,2})(?![\d.])[^,;]{0,24}(?:screw|bolt|schraube|vis\b|tornillo|vit[ei]\b|parafuso|śrub|šroub|schroe)/i,
      as: ([, thread, length]) => `${thread}x${length}`,
      places: ['text', 'box'],
    },
    {
      field: 'screws-each',
      pattern:
        /(?<![\w.])(\d{1,2})\s*x\s*M\d(?:\.\d)?\s*x\s*\d{1,2}(?![\d.])[^,;]{0,24}(?:screw|bolt|schraube|vis\b|tornillo|vit[ei]\b|parafuso|śrub|šroub|schroe)/i,
      as: ([, each]) => each!,
      unless: /\b(?:set|pack|lot|4|four|vier)\s+(?:of\s+)?(?:\d\s+)?motor/i,
      places: ['text', 'box'],
    },
    cellRange('cells'),
    {
      field: 'mount',
      pattern: new RegExp(`${pattern}[\\s,(]*(?:mounting\\s+)?(?:holes?|pattern)?[\\s,(]*M\\d(?:\\.\\d)?\\b`, 'i'),
      unless: /\b(?:stack|frame|fc|flight controller)\b/i,
    },
  ],
  propeller: [
    weight,
    {
      field: 'size',
      pattern: /(?<![\d.x])\d(?:\.\d{1,2})?"?\s*x\s*\d(?:\.\d{1,2})?"?\s*x\s*[2-6](?![\d.]|\s*mm)/i,
      unless: /\b(?:also|similar|instead|recommend\w*)\b/i,
    },
    {
      field: 'pieces',
      pattern:
        /\b(?:set|pack|bag|satz|lot|juego|confezione)\s*(?:of|von|mit|de|da)\s*(\d{1,2})\b(?!\s*(?:pairs?|paare?|paires?|pares|[x.-]))/i,
      as: ([, pieces]) => pieces!,
      places: ['text', 'box'],
    },
  ],
  esc: [
    weight,
    outside,
    mount,
    hole,
    grommets,
    protocols,
    cellRange('cells'),
    {
      field: 'type',
      pattern: /(?<![\d.])4[ -]?(?:in|en|w|v|em)[ -]?1(?![\d.])|\bfour[ -]in[ -]one\b/i,
      as: () => '4-in-1',
    },
    {
      field: 'channels',
      pattern: /\d\s*A\s*x\s*([1-8])(?![\d.])|(?<![\d.])([2-8])\s*x\s*\d{1,3}\s*A\b/i,
      as: ([, behind, before]) => (behind ?? before)!,
    },
    {
      field: 'current',
      pattern:
        /(?<![\d.])(\d+(?:\.\d+)?)\s*A\s*(?:continuous|cont\.|constant|dauer\w*|en continu|continu[ao]s?)(?!\w)/i,
      as: ([, amps]) => `${amps} A`,
    },
    {
      field: 'burst',
      pattern: new RegExp(
        `(?<![\\d.])(\\d+(?:\\.\\d+)?)\\s*A\\s*(?:burst|peak|spitze|kurzzeitig|de pointe|pico|di picco)\\b(?:[\\s,(]*(?:for|für|max\\.?)?\\s*(\\d+)\\s*${seconds})?`,
        'i',
      ),
      as: ([, amps, time]) => `${amps} A${time ? ` for ${time} s` : ''}`,
    },
    {
      field: 'burst',
      pattern:
        /(?<![\d.])(\d+(?:\.\d+)?)\s*A\s*(?:for|für|pendant|durante|per|por|przez|po dobu|gedurende)\s*(\d{1,3})\s*(?:s|se[ck]\w*|seg\w*|second\w*)(?!\w)/i,
      as: ([, amps, time]) => `${amps} A for ${time} s`,
    },
    {
      field: 'sensor-scale',
      pattern: /\bscale\b[^\d.]{0,12}(\d{2,4})(?![\d.]|\s*[a-z]*\/)/i,
      as: ([, scale]) => scale!,
    },
    {
      field: 'capacitor-supplied',
      pattern:
        /(?:capacitor|kondensator|condensateur|condensador|condensatore)\b.{0,20}(?:in the (?:box|bag|pouch)|included|supplied|enthalten|beiliegend|fourni|inclus|incluido)/i,
      as: () => 'yes',
      unless: withoutIt,
    },
    {
      field: 'capacitor-supplied',
      pattern: /\b(?:capacitor|kondensator|condensateur|condensador|condensatore)\b/i,
      as: () => 'yes',
      unless: withoutIt,
      places: ['box'],
    },
  ],
  'flight-controller': [
    weight,
    outside,
    mount,
    hole,
    grommets,
    protocols,
    cellRange('input'),
    {
      field: 'barometer-address',
      pattern: /\bbar[oó]m\p{L}*.{0,40}?\b(0x7[67])\b/iu,
      as: ([, address]) => address!,
    },
    {
      field: 'usb',
      pattern: /\b(?:usb|type|micro)[ -]?(?:type[ -]?)?(?:c|usb)\s*(?:port|connector|socket|interface|buchse)\b/i,
      as: () => 'yes',
      unless: withoutIt,
    },
  ],
  camera: [weight, voltageRange],
  'video-transmitter': [
    weight,
    {
      field: 'control',
      pattern: /\b(?:one|single|1)[ -]wire\b.{0,20}?\b(4800|9600)\b/i,
      as: ([, speed]) => `one-wire ${speed}`,
    },
    outside,
    mount,
    voltageRange,
    {
      field: 'levels',
      pattern:
        /(?<![\d.])\d+(?:\s*mW)?(?:(?:\s*[/|,&]\s*|\s+(?:and|und|et|y|e|i|oraz)\s+)(?:(?:and|und)\s+)?\d+(?:\s*mW)?){0,14}(?:\s*[/|,&]\s*|\s+(?:and|und|et|y|e|i|oraz)\s+)(?:(?:and|und)\s+)?\d+\s*mW\b/i,
    },
    {
      field: 'draw',
      pattern:
        /(?:\b(?:draws?|pulls|takes|needs|zieht|pobiera)|\b(?:consum|consom|stromaufn|stromverbr|assorb|pob[oó]r|odb[ěe]r|spot[řr]eb|verbru)\p{L}*)\b[^\d.]{0,24}(\d+(?:\.\d+)?)\s*(mA|A)\s*(?:at|@|bei|from|on|an|von|sous|a|à|con|przy|z|při|da|op)\s*(\d+(?:\.\d+)?)\s*V/iu,
      as: ([, amps, unit, volts]) =>
        `${Number((Number(amps) * Number(volts) * (/m/i.test(unit!) ? 0.001 : 1)).toPrecision(4))} W`,
    },
    {
      field: 'camera-supply',
      pattern:
        /(?<![\d.])\d+(?:\.\d+)?\s*V(?:olts?)?\s*(?:[@/]|at|bei|à|a)?\s*(?:up to|max\.?|bis zu|jusqu'à|hasta)?\s*\d+(?:\.\d+)?\s*m?A\b(?=[^.;]{0,40}\b(?:camera|kamera|caméra|cámara))/i,
      unless: /\b(?:draws?|consum\w+)\b.{0,30}(?:camera|kamera)/i,
    },
  ],
  receiver: [
    weight,
    voltageRange,
    {
      field: 'firmware-major',
      pattern:
        /\b(?:firmware|fw|oprogramowanie|software)\s*(?:v|ver\.?|version|:)?\s*(\d)(?:\.[\dx]+)*\b|\b(?:v|ver\.?|version)\s?(\d)(?:\.[\dx]+)*\s+(?:firmware|fw)\b/i,
      as: ([, behind, before]) => (behind ?? before)!,
    },
    {
      field: 'antenna-supplied',
      pattern: /\b(?:comes? with|includes?|supplied with|delivered with)\s+(?:\w+-?\s*){0,3}\bantenn[ae]?s?\b/i,
      as: () => 'yes',
      unless: /\b(?:without|no|not|connector|adapter|mount|tube|holder)\b/i,
    },
    {
      field: 'antenna-supplied',
      pattern: /\bantenn[ae]?s?\b/i,
      as: () => 'yes',
      unless: /\b(?:without|no|not|ohne|sans|sin|senza|connector|adapter|mount|tube|holder)\b/i,
      places: ['box'],
    },
  ],
  battery: [
    {
      field: 'plug-half',
      pattern: /\bXT\s?\d{2}\w?[- ]?(?:\w+\s)?\(?(?:hembra|female|femelle|femmina|fêmea|buchse|żeńsk\w*|samice)/i,
      as: () => 'sockets',
      unless: /\b(?:adapt\w*|charg\w*|lad\w*)\b/i,
    },
    {
      field: 'balance-pins',
      pattern:
        /\bbalanc\w*\b.{0,24}?(?<![\d.])(\d{1,2})\s*-?\s*(?:pins?|p|polig|pol|broches|pines|poli|polos|pinos)\b/i,
      as: ([, pins]) => pins!,
    },
  ],
  capacitor: [
    weight,
    {
      field: 'outside',
      pattern:
        /(?<![\d.x])(\d+(?:\.\d+)?)\s*mm\s*(?:dia\w*\.?|ø|across|wide)\s*x\s*(\d+(?:\.\d+)?)\s*mm|(?<![\d.]|x\s?)(\d+(?:\.\d+)?)\s*(?:mm)?\s*x\s*(\d+(?:\.\d+)?)\s*mm(?!\s*x)/i,
      as: ([, a, b, c, d]) => `${a ?? c}x${b ?? d} mm`,
    },
  ],
  'battery-lead': [
    {
      field: 'length',
      pattern:
        /(?<![\d.])(\d{2,3})\s*(mm|cm)\s*(?:(?:of|long)\s+)?(?:(?:\w+-?){1,2}\s+)?(?:AWG|wires?|leads?|silicone|cable)|AWG\D{0,20}?\b(\d{2,3})\s*(mm|cm)\b/i,
      as: ([, a, unit, b, other]) => `${a ?? b} ${unit ?? other}`,
      unless: /heat ?shrink|schrumpf/i,
    },
  ],
};

const common: readonly Rule[] = [weight];

export interface Hit {
  readonly field: string;
  /** For the reader of the field, as if it stood behind its label. */
  readonly text: string;
  /** The words that were matched. */
  readonly match: string;
}

/** @param sentence one sentence or line */
export function unlabelled(kind: string, sentence: string, place: Place): readonly Hit[] {
  const plain = plainSigns(sentence).trim();
  return (rules[kind] ?? common).flatMap((rule) => {
    if (!(rule.places ?? ['text']).includes(place) || rule.unless?.test(plain)) return [];
    const match = rule.pattern.exec(plain);
    return match ? [{ field: rule.field, text: rule.as?.(match) ?? match[0], match: match[0] }] : [];
  });
}
