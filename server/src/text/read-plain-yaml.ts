/**
 * Reads the plain sort of YAML that build files are written in (block maps and lists of one-line values) many times faster
 * than a whole parser. Leaves anything else to that, one entry alone where it can; must never give another tree than it.
 */
import { limits } from './limits';
import { depthUnder, endOfPart, isContained, movedEntry, movedFault, nodesUnder, onlyEntry } from './read-part';
import { type Span, span } from './span';
import type { Entry, MapNode, Node, ScalarNode, TextFault, TextTree } from './tree';

interface OpenMap {
  readonly is: 'map';
  readonly indent: number;
  readonly entries: Entry[];
  readonly keys: Set<string>;
  /** Key whose value has not come yet. */
  waiting: { readonly key: string; readonly keySpan: Span } | undefined;
}

interface OpenList {
  readonly is: 'list';
  readonly indent: number;
  readonly items: Node[];
  readonly start: number;
}

type Open = OpenMap | OpenList;

const keyPattern = /[A-Za-z0-9_][A-Za-z0-9_.+-]*(?: [A-Za-z0-9_.+-]+)*(?=:(?:[ \r\n]|$))/y;
/** Tabs, control characters and the rarer line ends are the whole parser's business. */
const unplain = /[^\n\r -~\u00a0-\u2027\u202a-\ud7ff\ue000-\ufefe\uff00-\uffff]|\r(?!\n)/;
/** First characters that mean something else than the start of a plain text. */
const special = new Set('"\'[]{}&*!|>%@`?,#-:~=<'.split(''));

/**
 * Nothing when the text holds what this reader leaves to the whole parser.
 * @param whole reads one entry that holds something else, such as a line that is half typed; without it there is none
 */
export function readPlainYaml(text: string, whole?: (part: string) => TextTree): TextTree | undefined {
  const reader = new PlainReader(text, whole);
  const root = reader.read();
  return root && { documents: [{ root, span: span(0, text.length) }], faults: reader.faults };
}

class PlainReader {
  private readonly open: Open[] = [];
  /** The last line held a value that a deeper line would go on with. */
  private ended = false;
  private lastIndent = 0;
  private root: Node | undefined;
  private nodes = 0;
  /** What is wrong in the part that the whole parser read. */
  faults: readonly TextFault[] = [];
  /** One such part is enough; with more, the order of their faults would be another. */
  private left = false;
  /** Mostly there is nothing of the kind in a whole file, and no line need be looked at. */
  private readonly hasUnplain: boolean;

  constructor(
    private readonly text: string,
    private readonly whole: ((part: string) => TextTree) | undefined,
  ) {
    this.hasUnplain = unplain.test(text);
  }

  read(): Node | undefined {
    const { text } = this;
    if (text.charCodeAt(0) === 0xfeff) return undefined;
    for (let at = 0; at < text.length; ) {
      const next = text.indexOf('\n', at);
      const end = next === -1 ? text.length : next;
      const last = end > at && text.charCodeAt(end - 1) === 13 ? end - 1 : end;
      if (this.line(at, last)) at = end + 1;
      else {
        const behind = this.leave(at);
        if (behind === undefined) return undefined;
        at = behind;
      }
    }
    while (this.open.length > 0) this.close();
    return this.root;
  }

  /**
   * Leaves the innermost entry around a line to the whole parser.
   * @returns where the lines behind it start; nothing when that can't be
   */
  private leave(at: number): number | undefined {
    const { text, open, whole } = this;
    if (!whole || this.left) return undefined;
    this.left = true;
    let indent = 0;
    while (text.charCodeAt(at + indent) === 32) indent++;
    for (let top = open.at(-1); top; open.pop(), top = open.at(-1)) {
      if (top.is === 'list' || top.indent >= indent || !top.waiting) continue;
      const { key, keySpan } = top.waiting;
      const start = keySpan.start - top.indent;
      // The key of an item stands behind its dash.
      if (text.slice(start, keySpan.start).trim() !== '' || (start > 0 && text[start - 1] !== '\n')) continue;
      const end = endOfPart(text, start, top.indent);
      const part = text.slice(start, end);
      if (!isContained(part)) return undefined;
      const tree = whole(part);
      const entry = onlyEntry(tree, key);
      if (!entry) return undefined;
      this.nodes += nodesUnder(entry.value);
      // Near a limit of the file it matters what is around, which a part read alone doesn't know.
      if (this.nodes > limits.nodes / 2 || open.length + depthUnder(entry.value) > limits.depth / 2) return undefined;
      this.faults = tree.faults.map((fault) => movedFault(fault, start));
      top.waiting = undefined;
      top.entries.push(movedEntry(entry, start));
      this.ended = true;
      this.lastIndent = top.indent;
      return end;
    }
    return undefined;
  }

  /** @returns false to give up */
  private line(start: number, end: number): boolean {
    const { text } = this;
    let at = start;
    while (at < end && text.charCodeAt(at) === 32) at++;
    if (at === end) return true;
    const first = text.charCodeAt(at);
    if (this.hasUnplain && unplain.test(text.slice(at, end))) return false;
    if (first === 35) return true;
    let indent = at - start;
    if (this.ended && indent > this.lastIndent) return false;
    if (!this.closeTo(indent)) return false;
    while (text.charCodeAt(at) === 45 && text.charCodeAt(at + 1) === 32) {
      if (!this.item(indent, at)) return false;
      at += 2;
      while (text.charCodeAt(at) === 32) at++;
      indent = at - start;
      if (at >= end) return false;
    }
    return this.entryOrText(indent, at, end);
  }

  /** Closes what lies deeper than a line; a line must start where something open starts, or open something new. */
  private closeTo(indent: number): boolean {
    for (let top = this.open.at(-1); top && top.indent > indent; top = this.open.at(-1)) this.close();
    const top = this.open.at(-1);
    if (!top) return this.root === undefined;
    if (top.indent === indent) return true;
    return top.is === 'map' && top.waiting !== undefined;
  }

  private item(indent: number, at: number): boolean {
    const top = this.open.at(-1);
    if (top?.is === 'list' && top.indent === indent) return true;
    // A list that starts where its key starts, or right inside another item, is left to the whole parser.
    if (top?.is !== 'map' || top.waiting === undefined || top.indent >= indent) return false;
    this.open.push({ is: 'list', indent, items: [], start: at });
    return true;
  }

  private entryOrText(indent: number, at: number, end: number): boolean {
    const { text } = this;
    keyPattern.lastIndex = at;
    if (!keyPattern.test(text) || keyPattern.lastIndex >= end) return this.itemText(at, end);
    const keySpan = span(at, keyPattern.lastIndex);
    const key = text.slice(keySpan.start, keySpan.end);
    let top = this.open.at(-1);
    if (top?.is === 'map' && top.indent === indent) this.settle(top);
    else {
      if (top && top.indent >= indent) return false;
      if (top?.is === 'list' && !this.inItem(top, at)) return false;
      top = { is: 'map', indent, entries: [], keys: new Set(), waiting: undefined };
      this.open.push(top);
    }
    if (top.keys.has(key) || ++this.nodes > limits.nodes || this.open.length > limits.depth) return false;
    top.keys.add(key);
    this.lastIndent = indent;
    let from = at + key.length + 1;
    while (from < end && text.charCodeAt(from) === 32) from++;
    const value = this.value(from, end);
    if (value === undefined) return false;
    this.ended = value !== 'none';
    if (value === 'none') top.waiting = { key, keySpan };
    else top.entries.push({ key, keySpan, value, via: undefined });
    return true;
  }

  /** Whether a map may start here: on the very line of its item's dash. */
  private inItem(list: OpenList, at: number): boolean {
    const line = this.text.lastIndexOf('\n', at) + 1;
    const dash = line + list.indent;
    return dash < at && this.text.charCodeAt(dash) === 45 && this.text.charCodeAt(dash + 1) === 32;
  }

  private itemText(at: number, end: number): boolean {
    const top = this.open.at(-1);
    if (top?.is !== 'list' || !this.inItem(top, at)) return false;
    const value = this.value(at, end);
    if (value === undefined || value === 'none') return false;
    top.items.push(value);
    this.ended = true;
    this.lastIndent = top.indent;
    return true;
  }

  /** A one-line value; `none` when nothing but a comment follows; nothing to give up. */
  private value(from: number, end: number): ScalarNode | 'none' | undefined {
    const { text } = this;
    if (from >= end) return 'none';
    const first = text[from]!;
    if (first === '#') return text.charCodeAt(from - 1) === 32 ? 'none' : undefined;
    if (first === '"' || first === "'") return this.quoted(from, end, first);
    if (special.has(first) && !(first === '-' && /[0-9A-Za-z]/.test(text[from + 1] ?? ''))) return undefined;
    const rest = text.slice(from, end);
    const comment = rest.indexOf(' #');
    const said = comment < 0 ? rest : rest.slice(0, comment);
    // A colon before a blank would start a map, or be a mistake.
    if (said.includes(': ') || said.endsWith(':')) return undefined;
    let stop = from + said.length;
    while (stop > from && text.charCodeAt(stop - 1) === 32) stop--;
    return { is: 'scalar', text: text.slice(from, stop), style: 'plain', span: span(from, stop), via: undefined };
  }

  private quoted(from: number, end: number, mark: string): ScalarNode | undefined {
    const { text } = this;
    const close = text.indexOf(mark, from + 1);
    if (close === -1 || close >= end) return undefined;
    const inside = text.slice(from + 1, close);
    if (inside.includes('\\') || !/^ *(?:$|#)/.test(text.slice(close + 1, end)) || text[close + 1] === '#')
      return undefined;
    return { is: 'scalar', text: inside, style: 'quoted', span: span(from, close + 1), via: undefined };
  }

  /** A key that got no value before the next one. */
  private settle(map: OpenMap): void {
    const { waiting } = map;
    if (!waiting) return;
    map.waiting = undefined;
    map.entries.push({
      ...waiting,
      value: { is: 'empty', span: span(waiting.keySpan.end, waiting.keySpan.end), via: undefined },
      via: undefined,
    });
  }

  private close(): void {
    const top = this.open.pop()!;
    if (top.is === 'map') this.settle(top);
    const node = top.is === 'map' ? mapNode(top.entries) : listNode(top);
    const under = this.open.at(-1);
    if (!under) this.root = node;
    else if (under.is === 'list') under.items.push(node);
    else if (under.waiting) {
      under.entries.push({ ...under.waiting, value: node, via: undefined });
      under.waiting = undefined;
    }
  }
}

function mapNode(entries: Entry[]): MapNode {
  const last = entries.at(-1)!;
  return {
    is: 'map',
    flow: false,
    entries,
    span: span(entries[0]!.keySpan.start, Math.max(last.keySpan.end, last.value.span.end)),
    via: undefined,
  };
}

const listNode = ({ items, start }: OpenList): Node => ({
  is: 'list',
  flow: false,
  items,
  span: span(start, items.at(-1)!.span.end),
  via: undefined,
});
