/** The edit that writes another text where a fact stands. Decides nothing. */
import type { Pointable } from '../build/fact';
import type { Fix } from '../build/finding';

export const write = (fact: Pointable, text: string): Fix => ({
  title: `Write \`${text}\``,
  edits: [{ file: fact.at.file, span: fact.at.span, text }],
});
