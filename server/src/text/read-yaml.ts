/** Reads text as YAML into our own tree: the plain sort quickly, the rest by the whole parser. Never throws on any input. */
import { limits } from './limits';
import { readPlainYaml } from './read-plain-yaml';
import { readWholeYaml } from './read-whole-yaml';
import { span } from './span';
import type { TextFault, TextTree } from './tree';

export function readYaml(text: string): TextTree {
  if (text.length > limits.characters) return { documents: [], faults: [tooLarge(text)] };
  return readPlainYaml(text, readWholeYaml) ?? readWholeYaml(text);
}

const tooLarge = (text: string): TextFault => ({
  id: 'file-too-large',
  span: span(0, Math.min(text.length, text.indexOf('\n') === -1 ? 80 : text.indexOf('\n'))),
  message: `This file has ${text.length} characters; files up to ${limits.characters} are read. Split it into several files.`,
});
