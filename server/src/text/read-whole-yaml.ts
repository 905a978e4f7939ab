/** Reads any YAML into our own tree, by the whole parser; tells what is wrong with it in the builder's words and never throws on any input. */
import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  type ParsedNode,
  parseAllDocuments,
  type YAMLError,
} from 'yaml';
import { limits } from './limits';
import { type Span, span } from './span';
import type { Entry, MapNode, Node, TextDocument, TextFault, TextTree } from './tree';
import { syntaxFault } from './yaml-wording';

export function readWholeYaml(text: string): TextTree {
  const control = firstControl(text);
  if (control !== undefined) return { documents: [], faults: [notText(control)] };
  const parsed = parseAllDocuments(text, {
    keepSourceTokens: false,
    uniqueKeys: false,
    strict: false,
    logLevel: 'silent',
    prettyErrors: false,
  });
  const list: Document.Parsed[] = Array.isArray(parsed) ? (parsed as Document.Parsed[]) : [];
  const faults: TextFault[] = [];
  const documents = list.map((document) => readDocument(document, text, faults));
  const last = documents.length - 1;
  // Comments and blank lines around belong to the first and the last document.
  const whole = documents.map(({ root, span: at }, i) => ({
    root,
    span: span(i === 0 ? 0 : at.start, i === last ? text.length : at.end),
  }));
  return { documents: whole, faults };
}

/** Where a character stands that no text has; tabs and line ends are none of them. */
function firstControl(text: string): number | undefined {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code < 32 && code !== 9 && code !== 10 && code !== 13) return i;
  }
  return undefined;
}

function readDocument(document: Document.Parsed, text: string, faults: TextFault[]): TextDocument {
  const reader = new Reader(text);
  const root = document.contents ? reader.node(document.contents, 0, undefined) : undefined;
  const seen = new Set<number>();
  for (const error of document.errors as YAMLError[]) {
    const fault = syntaxFault(text, error.code, error.message, clamp(text, error.pos[0], error.pos[1]));
    // One mistake makes the parser stumble several times at the same place; the first report is the one to mend.
    if (seen.has(fault.span.start)) continue;
    seen.add(fault.span.start);
    faults.push(fault);
  }
  faults.push(...reader.faults);
  const [start = 0, , end = text.length] = document.range ?? [];
  return { root, span: clamp(text, start, end) };
}

/** Follows one document. State: how much was read, which anchors are open, what was found wrong. */
class Reader {
  readonly faults: TextFault[] = [];
  private nodes = 0;
  private full = false;
  private readonly open = new Set<object>();
  /** The latest node under each anchor so far; an alias means the one before it. */
  private readonly anchors = new Map<string, object>();

  constructor(private readonly text: string) {}

  node(source: unknown, depth: number, via: Span | undefined): Node {
    const at = this.spanOf(source);
    if (this.full) return { is: 'empty', broken: true, span: at, via };
    this.noteAnchor(source);
    if (++this.nodes > limits.nodes || depth > limits.depth) {
      this.full = true;
      this.faults.push({ id: 'file-too-deep', span: at, message: tooDeep(depth > limits.depth) });
      return { is: 'empty', broken: true, span: at, via };
    }
    if (isAlias(source)) return this.alias(source as Alias.Parsed, depth, via);
    if (isMap(source)) return this.map(source, depth, via, at);
    if (isSeq(source)) {
      const items = source.items.map((item) => this.node(item, depth + 1, via));
      const flow = source.flow === true;
      return {
        is: 'list',
        flow,
        items,
        span: flow ? at : span(at.start, this.endOf(source.items.at(-1), items.at(-1), at)),
        via,
      };
    }
    if (isScalar(source)) return this.scalar(source, at, via);
    return { is: 'empty', span: at, via };
  }

  private scalar(source: { value: unknown; source?: string; type?: string }, at: Span, via: Span | undefined): Node {
    const plain = source.type === 'PLAIN' || source.type === undefined;
    if (plain && (source.source === undefined || source.source === '')) return { is: 'empty', span: at, via };
    if (plain) return { is: 'scalar', text: source.source ?? '', style: 'plain', span: at, via };
    const style = source.type?.startsWith('QUOTE') ? 'quoted' : 'block';
    return { is: 'scalar', text: String(source.value ?? ''), style, span: at, via };
  }

  private alias(source: Alias.Parsed, depth: number, via: Span | undefined): Node {
    const at = this.spanOf(source);
    const target = this.anchors.get(source.source);
    if (!target || this.open.has(target)) {
      const message = target
        ? `\`*${source.source}\` stands inside the anchor it repeats, so it would never end. Write the value out here.`
        : `There is no anchor \`&${source.source}\` above this line. Write the value out, or give the anchor that name.`;
      this.faults.push({ id: 'alias-unknown', span: at, message });
      return { is: 'empty', broken: true, span: at, via };
    }
    this.open.add(target);
    const node = this.node(target, depth + 1, via ?? at);
    this.open.delete(target);
    return node;
  }

  private map(
    source: { items: Pair<unknown, unknown>[]; flow?: boolean },
    depth: number,
    via: Span | undefined,
    at: Span,
  ): MapNode {
    const entries: Entry[] = [];
    const byKey = new Map<string, Entry>();
    const merged: Entry[] = [];
    let end = at.end;
    for (const pair of source.items) {
      const keySpan = this.spanOf(pair.key);
      const key = this.keyText(pair.key);
      if (key === undefined) continue;
      if (key === '<<') {
        merged.push(...this.merge(pair.value, depth, via));
        end = this.spanOf(pair.value).end;
        continue;
      }
      const value =
        pair.value == null
          ? ({ is: 'empty', span: span(keySpan.end, keySpan.end), via } as const)
          : this.valueOf(pair.value, keySpan, depth, via);
      end = Math.max(keySpan.end, this.endOf(pair.value, value, keySpan));
      const first = byKey.get(key);
      if (first) {
        this.faults.push({
          id: 'key-twice',
          span: keySpan,
          message: `\`${key}\` is said twice here; only the first counts. Take one of them out.`,
          related: { span: first.keySpan, message: 'said first here' },
        });
        continue;
      }
      const entry: Entry = { key, keySpan, value, via };
      byKey.set(key, entry);
      entries.push(entry);
    }
    for (const entry of merged) {
      if (byKey.has(entry.key)) continue;
      byKey.set(entry.key, entry);
      entries.push(entry);
    }
    const flow = source.flow === true;
    return { is: 'map', flow, entries, span: flow ? at : span(at.start, end), via };
  }

  /** An empty value stands right behind its key, wherever the parser puts it. */
  private valueOf(source: unknown, keySpan: Span, depth: number, via: Span | undefined): Node {
    const value = this.node(source, depth + 1, via);
    return value.is === 'empty' && !value.broken ? { ...value, span: span(keySpan.end, keySpan.end) } : value;
  }

  /** Where a value ends as it is written: an alias by its own few characters, a block without the blank lines behind it. */
  private endOf(source: unknown, value: Node | undefined, otherwise: Span): number {
    if (source === null || source === undefined || value === undefined) return otherwise.end;
    return isAlias(source) ? this.spanOf(source).end : value.span.end;
  }

  private merge(value: unknown, depth: number, via: Span | undefined): readonly Entry[] {
    const at = this.spanOf(value);
    const node = this.node(value, depth + 1, via ?? at);
    const maps = node.is === 'list' ? node.items : [node];
    return maps.flatMap((map) => (map.is === 'map' ? map.entries.map((entry) => ({ ...entry, via: via ?? at })) : []));
  }

  private noteAnchor(source: unknown): void {
    const { anchor } = source as { anchor?: string };
    if (anchor !== undefined) this.anchors.set(anchor, source as object);
  }

  private keyText(key: unknown): string | undefined {
    if (isScalar(key)) this.noteAnchor(key);
    if (isScalar(key)) return key.type === 'PLAIN' ? (key.source ?? '') : String(key.value ?? '');
    if (isAlias(key)) {
      const target = this.anchors.get(key.source);
      return isScalar(target) ? String(target.value ?? '') : undefined;
    }
    return undefined;
  }

  private spanOf(source: unknown): Span {
    const range = (source as ParsedNode | null | undefined)?.range;
    return range ? clamp(this.text, range[0], range[1]) : span(0, 0);
  }
}

function clamp(text: string, start: number, end: number): Span {
  const from = Math.max(0, Math.min(start, text.length));
  return span(from, Math.max(from, Math.min(end, text.length)));
}

const tooDeep = (deep: boolean): string =>
  deep
    ? `This file nests deeper than ${limits.depth} levels. Nothing below here is read; a build needs about six.`
    : `This file grows past ${limits.nodes} values once its aliases are followed. Nothing below here is read; write fewer aliases.`;

const notText = (at: number): TextFault => ({
  id: 'not-text',
  span: span(at, at + 1),
  message:
    'This file holds control characters, so it is not a text that can be read as YAML. Save it as plain UTF-8 text.',
});
