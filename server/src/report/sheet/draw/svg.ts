/** Builds markup from names, attributes and text, with everything escaped. Knows nothing of what is drawn. */

/** Markup that is already safe. */
export interface Markup {
  readonly markup: string;
}

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;
export type Kid = Markup | string | undefined | false | readonly Kid[];

export const escapeText = (text: string): string => (suspicious.test(text) ? escaped(text) : text);

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones meant
const suspicious = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff&<>"']/;

const escaped = (text: string): string =>
  text
    // Characters that no markup may hold, not even escaped.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones meant
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/[&<>"']/g, (char) => `&#${char.charCodeAt(0)};`);

/** Three digits behind the point: a thousandth of a millimetre or of a pixel. */
export const short = (value: number): string => String(Math.round(value * 1000) / 1000 || 0);

const withoutEnd: ReadonlySet<string> = new Set(['line', 'circle', 'rect', 'path', 'polyline', 'polygon', 'use']);

export function el(name: string, attributes: Attributes, ...kids: readonly Kid[]): Markup {
  let said = '';
  for (const key in attributes) {
    const value = attributes[key];
    if (value === undefined || value === false) continue;
    said += ` ${key}="${typeof value === 'number' ? short(value) : value === true ? '' : escapeText(value)}"`;
  }
  const inner = kids.map(textOf).join('');
  return { markup: inner === '' && withoutEnd.has(name) ? `<${name}${said}/>` : `<${name}${said}>${inner}</${name}>` };
}

export const together = (...kids: readonly Kid[]): Markup => ({ markup: kids.map(textOf).join('') });

function textOf(kid: Kid): string {
  if (kid === undefined || kid === false) return '';
  if (typeof kid === 'string') return escapeText(kid);
  return 'markup' in kid ? kid.markup : kid.map(textOf).join('');
}
