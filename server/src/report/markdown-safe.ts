/** Makes words from a file harmless in a comment: nothing in them becomes markup, a link, a mention or a command. Lays out nothing. */

/** Control characters, marks that turn the reading direction, and characters without width, as their numbers. */
export const visible = (text: string): string =>
  text.replace(/[\t\r\n\u2028\u2029]+/g, ' ').replace(
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is made visible
    /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|\p{Cs}/gu,
    (char) => `\\u${char.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** The first characters of a long text. */
export const cut = (text: string, most = 200): string => {
  const all = [...text.slice(0, most * 2 + 2)];
  return all.length > most ? `${all.slice(0, most).join('')}…` : text;
};

/** Breaks up what a host would turn into a mention, a reference, a command or a link after the Markdown is read. */
const unlinked = (text: string): string =>
  text
    .replace(/([@#!~%$&^])(?=[\p{L}\p{N}_{"])/gu, '$1\u2060')
    .replace(/:(?=[\p{L}\p{N}+/])/gu, ':\u2060')
    .replace(/(www)\./gi, '$1\u2060.')
    .replace(/\b(GH)-(?=\d)/gi, '$1\u2060-');

/**
 * Plain words within a line; safe in a table as well, where code is not. What means something only at the start of a
 * line is left as it is, so a line must not start with them.
 */
export const markdownWords = (text: string): string => unlinked(visible(text)).replace(/[\\`*_[\]<>&|~$#!]/g, '\\$&');

/** Words as they are written in a file, in a code span that nothing in them can end. */
export function markdownCode(text: string): string {
  const shown = visible(text);
  if (shown.trim() === '') return '`\u2423`';
  const runs = shown.match(/`+/g)?.map((run) => run.length) ?? [];
  let fence = '`';
  while (runs.includes(fence.length)) fence += '`';
  const pad = /^[` ]|[` ]$/.test(shown) ? ' ' : '';
  return `${fence}${pad}${shown}${pad}${fence}`;
}

/** A sentence of ours with words of the file in it: what stands in backticks becomes code. */
export const markdownSentence = (text: string): string =>
  visible(text)
    .split(/(`[^`]+`)/)
    .map((piece, i) => (i % 2 === 1 ? markdownCode(piece.slice(1, -1)) : markdownWords(piece)))
    .join('');

/** Inside HTML of a comment: Markdown doesn't look into it, but hosts still make mentions and links of what it says. */
export const htmlInComment = (text: string): string => htmlWords(unlinked(visible(text)), true);

/** Inside HTML or SVG. */
export const htmlWords = (text: string, isVisible = false): string =>
  (isVisible ? text : visible(text)).replace(/[&<>"'`[\]*_|~\\]/g, (char) => `&#${char.charCodeAt(0)};`);
