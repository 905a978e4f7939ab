/** Where the cursor stands while something is being typed, read from the lines themselves, since a half-typed file is rarely sound YAML. */
import type { Span } from '../text/span';

export interface Cursor {
  /** Keys from the root down to the map or list that the cursor is in. List items count as `-`. */
  readonly path: readonly string[];
  readonly at: 'key' | 'value';
  /** The key whose value is being typed. */
  readonly key: string | undefined;
  /** What has been typed of the word, up to the cursor. */
  readonly typed: string;
  /** The word to replace. */
  readonly word: Span;
  /** Keys already there in the same map. */
  readonly siblings: ReadonlySet<string>;
  /** `kind:` of the same map or, inside it, of the maps around, by depth. */
  readonly kinds: readonly (string | undefined)[];
  readonly indent: number;
  /** Inside `{ }` on one line. */
  readonly flow: boolean;
  /** A blank must be written between the colon and the value. */
  readonly needsBlank: boolean;
}

interface Line {
  readonly indent: number;
  readonly key: string;
  readonly item: boolean;
  readonly value: string;
}

const keyLine = /^(\s*)((?:-\s+)*)(?:"([^"]*)"|'([^']*)'|([^\s#:"'{[,][^:]*?))\s*:(?:\s(.*))?$/;

export function cursorAt(text: string, offset: number): Cursor {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const before = text.slice(start, offset);
  const lineEnd = endOfLine(text, offset);
  const after = text.slice(offset, lineEnd);
  const flow = openBrace(before);
  if (flow !== undefined) return flowCursor(text, offset, start, before, after, flow);
  const pair = /^(\s*(?:-\s+)*)([\w.-]+)\s*:(\s*)(.*)$/.exec(before);
  const indent = /^\s*(?:-\s+)*/.exec(before)![0].length;
  const { path, kinds, siblings } = around(text, start, indent, pair?.[2], /^\s*-\s/.test(before));
  if (pair) {
    const value = pair[4]!;
    // In a list on one line only the piece behind the last comma is being typed.
    const comma = Math.max(value.lastIndexOf(','), value.lastIndexOf('['));
    const piece = value.slice(comma + 1);
    const typed = piece.trimStart();
    const rest = /^[^,\]#]*/.exec(after)![0].trimEnd();
    return {
      path,
      at: 'value',
      key: pair[2],
      typed,
      word: { start: offset - typed.length, end: offset + rest.length },
      siblings,
      kinds,
      indent,
      flow: false,
      needsBlank: pair[3] === '' && value === '',
    };
  }
  const typed = before.slice(indent);
  const rest = /^[\w.-]*/.exec(after)![0];
  return {
    path,
    at: 'key',
    key: undefined,
    typed,
    word: { start: offset - typed.length, end: offset + rest.length },
    siblings,
    kinds,
    indent,
    flow: false,
    needsBlank: false,
  };
}

const endOfLine = (text: string, offset: number): number => {
  const at = text.slice(offset).search(/\r?\n/);
  return at === -1 ? text.length : offset + at;
};

/** Offset in the line of the innermost brace that is still open. */
function openBrace(before: string): number | undefined {
  const open: number[] = [];
  for (let i = 0; i < before.length; i++) {
    if (before[i] === '{') open.push(i);
    else if (before[i] === '}') open.pop();
  }
  return open.at(-1);
}

function flowCursor(text: string, offset: number, start: number, before: string, after: string, brace: number): Cursor {
  const outer = cursorAt(text, start + brace);
  const inside = before.slice(brace + 1);
  const piece = inside.slice(inside.lastIndexOf(',') + 1);
  const whole = `${inside}${/^[^}]*/.exec(after)![0]}`;
  const pairs = [...whole.matchAll(/([\w.-]+)\s*:\s*([^,}]*)/g)];
  const siblings = new Set(pairs.map((pair) => pair[1]!));
  const kind = pairs.find((pair) => pair[1] === 'kind')?.[2]?.trim();
  const path = outer.key === undefined ? outer.path : [...outer.path, outer.key];
  const kinds = [...outer.kinds, kind];
  const pair = /^\s*([\w.-]+)\s*:(\s*)(.*)$/.exec(piece);
  const rest = /^[^,}]*/.exec(after)![0].trimEnd();
  if (pair)
    return {
      path,
      at: 'value',
      key: pair[1],
      typed: pair[3]!,
      word: { start: offset - pair[3]!.length, end: offset + rest.length },
      siblings,
      kinds,
      indent: outer.indent,
      flow: true,
      needsBlank: pair[2] === '',
    };
  const typed = piece.trimStart();
  return {
    path,
    at: 'key',
    key: undefined,
    typed,
    word: { start: offset - typed.length, end: offset + /^[\w.-]*/.exec(after)![0].length },
    siblings,
    kinds,
    indent: outer.indent,
    flow: true,
    needsBlank: false,
  };
}

/** The keys above by indentation, and the keys beside on both sides of the line. */
function around(
  text: string,
  start: number,
  indent: number,
  own: string | undefined,
  inItem: boolean,
): Pick<Cursor, 'path' | 'kinds' | 'siblings'> {
  const path: string[] = [];
  const kinds: (string | undefined)[] = [];
  const siblings = new Set<string>();
  let level = indent;
  let kind: string | undefined;
  const above = text.slice(0, start).split('\n').slice(0, -1);
  const documentStart = above.findLastIndex((line) => /^---(?:\s|$)/.test(line));
  let pastItem = inItem;
  for (const line of above.slice(documentStart + 1).reverse()) {
    const read = readLine(line);
    if (!read) {
      const item = /^(\s*)-\s+/.exec(line);
      if (item && item[1]!.length < level && item[0].length === level) pastItem = true;
      continue;
    }
    if (read.indent === level && !(pastItem && path.length === 0)) {
      if (path.length === 0) siblings.add(read.key);
      if (read.key === 'kind') kind ??= read.value;
      if (read.item) pastItem = true;
    } else if (read.indent < level) {
      kinds.unshift(kind);
      kind = read.key === 'kind' ? read.value : undefined;
      path.unshift(read.key);
      level = read.indent;
    }
  }
  kinds.unshift(kind);
  const below = belowAt(text, start, indent);
  for (const read of below) siblings.add(read.key);
  kinds[kinds.length - 1] ??= below.find((read) => read.key === 'kind')?.value;
  if (own !== undefined) siblings.delete(own);
  return { path, kinds, siblings };
}

function belowAt(text: string, start: number, indent: number): readonly Line[] {
  const found: Line[] = [];
  for (const line of text.slice(start).split('\n').slice(1)) {
    if (line.trim() === '' || /^\s*#/.test(line)) continue;
    const read = readLine(line);
    const lead = /^\s*/.exec(line)![0].length;
    if (lead < indent || read?.item) break;
    if (read?.indent === indent) found.push(read);
  }
  return found;
}

function readLine(line: string): Line | undefined {
  const match = keyLine.exec(line.replace(/\r$/, ''));
  if (!match) return undefined;
  const key = match[3] ?? match[4] ?? match[5] ?? '';
  return {
    indent: match[1]!.length + match[2]!.length,
    key,
    item: match[2] !== '',
    value: (match[6] ?? '').replace(/\s+#.*$/, '').trim(),
  };
}
