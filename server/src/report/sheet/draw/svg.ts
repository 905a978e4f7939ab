/** Builds markup from names, attributes and text, with everything escaped. Knows nothing of what is drawn. */

/** Markup that is already safe. */
export interface Markup {
  readonly markup: string;
}

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;
export type Kid = Markup | string | undefined | false | readonly Kid[];

export const escapeText = (text: string): string =>
  text
    // Characters that no markup may hold, not even escaped.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones meant
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/[&<>"']/g, (char) => `&#${char.charCodeAt(0)};`);

/** Three digits behind the point: a thousandth of a millimetre or of a pixel. */
export const short = (value: number): string => {
  const text = value.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
};

const withoutEnd: ReadonlySet<string> = new Set(['line', 'circle', 'rect', 'path', 'polyline', 'polygon', 'use']);

export function el(name: string, attributes: Attributes, ...kids: readonly Kid[]): Markup {
  const said = Object.entries(attributes)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([key, value]) =>
      value === true
        ? ` ${key}=""`
        : ` ${key}="${typeof value === 'number' ? short(value) : escapeText(String(value))}"`,
    )
    .join('');
  const inner = kids.map(textOf).join('');
  return { markup: inner === '' && withoutEnd.has(name) ? `<${name}${said}/>` : `<${name}${said}>${inner}</${name}>` };
}

export const together = (...kids: readonly Kid[]): Markup => ({ markup: kids.map(textOf).join('') });

function textOf(kid: Kid): string {
  if (kid === undefined || kid === false) return '';
  if (typeof kid === 'string') return escapeText(kid);
  return 'markup' in kid ? kid.markup : kid.map(textOf).join('');
}
