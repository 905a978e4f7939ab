/**
 * Cuts the part of a file out that the quick reader can't read, when nothing in it can reach beyond it, and moves what
 * the whole parser makes of it back to its place. Decides nothing about the rest.
 */
import { type Span, span } from './span';
import type { Entry, Node, TextFault, TextTree } from './tree';

/** Where the lines below `start` end that lie deeper than `indent`; comments and blank lines belong to what is above them. */
export function endOfPart(text: string, start: number, indent: number): number {
  for (let at = text.indexOf('\n', start) + 1; at > 0; at = text.indexOf('\n', at) + 1) {
    let first = at;
    while (text.charCodeAt(first) === 32) first++;
    if (first - at <= indent && first < text.length && !'#\r\n'.includes(text[first]!)) return at;
  }
  return text.length;
}

/** Anchors and tags mean something to other parts, and tabs, explicit keys and the rest make the parser lose its way. */
const reaching = /[&*!%@`\t]|^ *\?/m;

/** Whether each quote and bracket is closed on its own line, and each dash stands in its list, so that nothing runs on into the lines behind. */
export function isContained(part: string): boolean {
  if (reaching.test(part)) return false;
  const lines = part.split('\n');
  return lines.every(isClosed) && dashesStandInLists(lines);
}

/** A dash left of the line above it, where no list is, makes the parser take a list for a key and swallow what follows. */
function dashesStandInLists(lines: readonly string[]): boolean {
  const lists = new Set<number>();
  let above = -1;
  for (const line of lines) {
    const indent = line.search(/[^ \r]/);
    if (indent === -1 || line[indent] === '#') continue;
    if (/^ *-(?: |\r?$)/.test(line)) {
      if (indent < above && !lists.has(indent)) return false;
      lists.add(indent);
    }
    above = indent;
  }
  return true;
}

function isClosed(line: string): boolean {
  const brackets = /[[\]{}]/.test(line);
  const quotes = /["']/.test(line);
  if (!brackets && !quotes) return true;
  // What stands behind a number sign may be a comment or not; where both kinds meet, either may be mere text.
  if (line.includes('#') || (brackets && quotes)) return false;
  return brackets ? bracketsClose(line) : quotesClose(line);
}

function bracketsClose(line: string): boolean {
  const open: string[] = [];
  for (const char of line) {
    if (char === '[' || char === '{') open.push(char === '[' ? ']' : '}');
    else if ((char === ']' || char === '}') && open.pop() !== char) return false;
  }
  return open.length === 0;
}

function quotesClose(line: string): boolean {
  if (line.includes('\\')) return false;
  for (let i = 0; i < line.length; i++) {
    const mark = line[i]!;
    if (mark !== '"' && mark !== "'") continue;
    const [before, after] = [line[i - 1] ?? ' ', line[i + 1] ?? ' '];
    if (/\w/.test(before) && /\w/.test(after)) continue;
    const close = line.indexOf(mark, i + 1);
    if (before !== ' ' || close === -1) return false;
    i = close;
  }
  return true;
}

/** The one entry of a part that was read alone; nothing when that is not all there is. */
export function onlyEntry(tree: TextTree, key: string): Entry | undefined {
  const [document, ...others] = tree.documents;
  const root = document?.root;
  if (others.length > 0 || root?.is !== 'map' || root.flow || root.entries.length !== 1) return undefined;
  const [entry] = root.entries;
  return entry?.key === key ? entry : undefined;
}

export const nodesUnder = (node: Node): number =>
  node.is === 'map'
    ? node.entries.reduce((sum, { value }) => sum + nodesUnder(value), 1)
    : node.is === 'list'
      ? node.items.reduce((sum, item) => sum + nodesUnder(item), 1)
      : 1;

/** Maps and lists inside one another; nothing for a single value. */
export const depthUnder = (node: Node): number =>
  node.is === 'map'
    ? node.entries.reduce((most, { value }) => Math.max(most, depthUnder(value)), 0) + 1
    : node.is === 'list'
      ? node.items.reduce((most, item) => Math.max(most, depthUnder(item)), 0) + 1
      : 0;

export const movedEntry = (entry: Entry, by: number): Entry => ({
  key: entry.key,
  keySpan: movedSpan(entry.keySpan, by),
  value: movedNode(entry.value, by),
  via: entry.via && movedSpan(entry.via, by),
});

function movedNode(node: Node, by: number): Node {
  const written = { span: movedSpan(node.span, by), via: node.via && movedSpan(node.via, by) };
  if (node.is === 'map') return { ...node, ...written, entries: node.entries.map((entry) => movedEntry(entry, by)) };
  if (node.is === 'list') return { ...node, ...written, items: node.items.map((item) => movedNode(item, by)) };
  return { ...node, ...written };
}

export const movedFault = ({ related, fix, ...fault }: TextFault, by: number): TextFault => ({
  ...fault,
  span: movedSpan(fault.span, by),
  ...(related && { related: { ...related, span: movedSpan(related.span, by) } }),
  ...(fix && { fix: { ...fix, span: movedSpan(fix.span, by) } }),
});

const movedSpan = (at: Span, by: number): Span => span(at.start + by, at.end + by);
