/** Words for what the YAML parser reports, for somebody who doesn't know YAML; adds a fix where one edit mends it. */
import type { Span } from './span';
import type { TextFault } from './tree';

export function syntaxFault(text: string, code: string, parserWords: string, at: Span): TextFault {
  const id = 'yaml-syntax';
  const line = lineAround(text, at.start);
  const colon = nestedColon(line.text);
  if (
    (code === 'BLOCK_AS_IMPLICIT_KEY' || code === 'UNEXPECTED_TOKEN' || /compact mapping/i.test(parserWords)) &&
    colon
  ) {
    const start = line.start + colon.start;
    const end = line.start + colon.end;
    return {
      id,
      span: { start, end },
      message: `A colon followed by a space starts a new key, so YAML cannot read \`${colon.value}\` as one text. Put it in quotes.`,
      fix: { title: `Put ${quoted(colon.value)} in quotes`, span: { start, end }, text: quoted(colon.value) },
    };
  }
  return {
    id,
    span: widen(text, at),
    message:
      words[code] ??
      `YAML cannot read this line (${firstSentence(parserWords)}). Check the indentation, the colon after the key, and quotes.`,
  };
}

const words: Record<string, string> = {
  TAB_AS_INDENT: 'A tab indents this line; YAML takes only spaces. Use two spaces a level.',
  BAD_INDENT: 'This line is indented differently from the lines it belongs to. Line its key up with the keys above.',
  MISSING_CHAR: 'A closing quote, bracket or a colon is missing here.',
  MULTILINE_IMPLICIT_KEY: 'This line has no colon after its key. Write `key: value`.',
  BLOCK_IN_FLOW:
    'An indented block cannot stand inside brackets. Close the bracket first, or write everything inside it on one line.',
  BAD_ALIAS: 'A name after `*` or `&` is malformed. Put the text in quotes if it is meant as text.',
  UNEXPECTED_TOKEN:
    'YAML cannot read this: something stands here that belongs elsewhere. Check the colon, the quotes and the indentation.',
  IMPOSSIBLE: 'YAML cannot read this. Check the colon, the quotes and the indentation.',
  KEY_OVER_1024_CHARS: 'This key is longer than 1,024 characters; a colon or a line break is missing.',
  BAD_SCALAR_START: 'A value cannot start with this character. Put it in quotes.',
};

const quoted = (value: string): string => `"${value.replace(/\\/g, '\\\\').replace(/"/g, '\\"')}"`;

function lineAround(text: string, offset: number): { text: string; start: number } {
  const start = text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1;
  const next = text.indexOf('\n', offset);
  return { text: text.slice(start, next === -1 ? text.length : next).replace(/\r$/, ''), start };
}

/** The value of `key: some: text`, when a line has that form. */
function nestedColon(line: string): { value: string; start: number; end: number } | undefined {
  const match = /^(\s*(?:- )?[\w-]+:\s+)([^\s"'[{|>&*#][^#]*?:\s[^#]*?)\s*(?:\s#.*)?$/.exec(line);
  if (!match) return undefined;
  const start = match[1]!.length;
  return { value: match[2]!, start, end: start + match[2]!.length };
}

/** An error of no width is shown on the word before it, so that it can be seen and clicked. */
function widen(text: string, at: Span): Span {
  if (at.end > at.start) {
    const lineEnd = text.slice(at.start, at.end).search(/\r?\n/);
    return lineEnd > 0 ? { start: at.start, end: at.start + lineEnd } : at;
  }
  let start = at.start;
  while (start > 0 && /\s/.test(text[start - 1]!)) start--;
  const end = start;
  while (start > 0 && /\S/.test(text[start - 1]!)) start--;
  return { start, end: Math.max(end, start) };
}

const firstSentence = (message: string): string => (message.split('\n')[0] ?? '').replace(/[.:]\s*$/, '').slice(0, 120);
