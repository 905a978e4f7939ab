/** Proposes the fields of a part from text pasted from a seller's page, each with the words it came from. Guesses nothing and writes no file. */
import { readers } from '../../text/notation';
import { readQuantity } from '../../text/quantity';
import type { Field, MapField } from '../../vocabulary/field';
import { partsField } from '../../vocabulary/generated/fields';
import { inSentences, inTitles, labels, notOurs, saidByName, titleLabels } from './labels';
import { readAs, type Written } from './read-value';
import { clausesOf, cut, fold, type Pasted } from './text';

export interface Proposal {
  /** `weight`; in a part of two boards `esc.current`. */
  readonly path: string;
  /** As it will stand in the file, with its origin where the notation takes one. */
  readonly value: Written;
  /** The line of the page. */
  readonly words: string;
  /** Another value that the page names for the same field, with its line. */
  readonly differs?: { readonly value: Written; readonly words: string };
}

export interface Proposed {
  readonly kind: string;
  readonly name: string | undefined;
  /** In the order of the trade, which is the schema's. */
  readonly fields: readonly Proposal[];
}

interface Target {
  readonly path: string;
  readonly key: string;
  readonly field: Field;
  readonly labels: readonly string[];
}

/** Fields that belong to a build or to the file, never to a seller's page. */
const ownWords: ReadonlySet<string> = new Set([
  'use',
  'kind',
  'name',
  'count',
  'spares',
  'at',
  'supplied',
  'owned',
  'from',
  'source',
  'seen',
  'note',
]);

export const partKinds: readonly string[] = (() => {
  const parts = partsField.fields.parts;
  return parts?.is === 'table' && parts.of.is === 'by-kind' ? Object.keys(parts.of.kinds) : [];
})();

export function fieldsOfKind(kind: string): MapField | undefined {
  const parts = partsField.fields.parts;
  return parts?.is === 'table' && parts.of.is === 'by-kind' && Object.hasOwn(parts.of.kinds, kind)
    ? parts.of.kinds[kind]
    : undefined;
}

/** Kinds that hold other parts whole. */
const halves: Readonly<Record<string, Readonly<Record<string, RegExp>>>> = {
  stack: {
    'flight-controller': /^(?:fc|flight controller|flugsteuerung|controleur de vol|controlador de vuelo)\b/,
    esc: /^(?:esc|4.?in.?1 esc|regler|variateur)\b/,
  },
};

/** @param today YYYY-MM-DD, which the origin of each value will carry */
export function proposeFields(kind: string, text: string, today: string): Proposed {
  const table = fieldsOfKind(kind);
  if (!table) return { kind, name: undefined, fields: [] };
  const pasted = cut(text);
  const inside = halves[kind];
  const found = new Map<string, Proposal>();
  if (!inside) collect(kind, '', table, pasted, found);
  else {
    // A page of two boards has a heading for each; what stands before the first is about both together.
    const sections = new Map<string, Pasted[]>();
    let section = '';
    for (const one of pasted) {
      const heading = fold(one.words);
      if (heading.length < 40)
        section = Object.entries(inside).find(([, pattern]) => pattern.test(heading))?.[0] ?? section;
      sections.set(section, [...(sections.get(section) ?? []), one]);
    }
    for (const [name, lines] of sections) {
      const field = name === '' ? table : table.fields[name];
      if (field?.is === 'map') collect(name || kind, name === '' ? '' : `${name}.`, field, lines, found);
    }
  }
  const order = [...found.values()].map((one) => ({ one, at: placeOf(table, one.path) })).sort((a, b) => a.at - b.at);
  return { kind, name: nameIn(pasted), fields: order.map(({ one }) => ({ ...one, ...dated(table, one, today) })) };
}

function collect(
  kind: string,
  prefix: string,
  table: MapField,
  pasted: readonly Pasted[],
  found: Map<string, Proposal>,
): void {
  const targets = targetsOf(kind, table);
  const take = (target: Target, value: Written | undefined, words: string): void => {
    if (value === undefined) return;
    const path = `${prefix}${target.path}`;
    const known = found.get(path);
    if (!known) found.set(path, { path, value, words });
    else if (!known.differs && JSON.stringify(known.value) !== JSON.stringify(value))
      found.set(path, { ...known, differs: { value, words } });
  };
  const read = (target: Target, text: string, aside: string, labelled: boolean): Written | undefined =>
    readAs({ key: target.key, field: target.field, text, aside, labelled });
  // Named values first: they are surer than what a sentence or a title says.
  for (const { key, aside, value, words } of pasted)
    if (key !== undefined)
      for (const target of targets)
        if (target.labels.includes(key)) take(target, read(target, value, aside, true), words);
  for (const one of pasted) {
    const spoken =
      one.key === undefined || isTitle(one) ? one.value : knownKey(targets, one.key) ? one.value : undefined;
    if (spoken === undefined) continue;
    for (const clause of clausesOf(spoken))
      inClause(
        targets,
        clause,
        one.key === undefined,
        (target, value) =>
          found.has(prefix + target.path) || take(target, value, one.key === undefined ? clause.trim() : one.words),
        read,
      );
  }
  for (const one of pasted) {
    const title = (one.key === undefined && one.top) || isTitle(one);
    const keys = [
      ...(title ? (inTitles[kind] ?? []) : []),
      ...(one.key === undefined ? (inSentences[kind] ?? []) : []),
    ];
    for (const target of targets) {
      if (!keys.includes(target.key) || found.has(prefix + target.path)) continue;
      const flag = saidByName[target.key];
      take(
        target,
        flag ? (flag.test(fold(one.value)) ? 'yes' : undefined) : read(target, one.value, '', false),
        one.words,
      );
    }
  }
  assembleSize(kind, prefix, found);
}

const isTitle = (one: Pasted): boolean => one.key !== undefined && titleLabels.includes(one.key);
const knownKey = (targets: readonly Target[], key: string): boolean =>
  targets.some((target) => target.labels.includes(key));

/** Every label in the clause, longest first; its value stands behind it, or else before it. */
function inClause(
  targets: readonly Target[],
  clause: string,
  sentence: boolean,
  take: (target: Target, value: Written | undefined) => void,
  read: (target: Target, text: string, aside: string, labelled: boolean) => Written | undefined,
): void {
  const folded = fold(clause);
  const all = [...new Set([...targets.flatMap((target) => target.labels), ...notOurs.map(fold)])].sort(
    (a, b) => b.length - a.length,
  );
  const hits: { label: string; start: number; end: number }[] = [];
  for (const label of all) {
    const start = indexOfWord(folded, label);
    if (start >= 0 && !hits.some((hit) => start < hit.end && start + label.length > hit.start))
      hits.push({ label, start, end: start + label.length });
  }
  hits.sort((a, b) => a.start - b.start);
  hits.forEach((hit, i) => {
    const behind = folded.slice(hit.end, hits[i + 1]?.start).replace(/^\s*[:=]?\s*/, '');
    const before = folded.slice(hits[i - 1]?.end ?? 0, hit.start);
    for (const target of targets) {
      if (!target.labels.includes(hit.label)) continue;
      // A plain yes or a bare number is only meant behind its own label.
      const labelled = /^(?:of |is |von |de |di )?\S/.test(behind) && behind !== '' && sentence;
      take(target, read(target, behind, '', labelled) ?? read(target, before, '', /\d\s*$/.test(before)));
    }
  });
}

function indexOfWord(text: string, word: string): number {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1))
    if (!/[a-z0-9]/.test(text[at - 1] ?? ' ') && !/[a-z0-9]/.test(text[at + word.length] ?? ' ')) return at;
  return -1;
}

const parts: readonly string[] = ['~diameter', '~pitch', '~blades'];

function targetsOf(kind: string, table: MapField): readonly Target[] {
  const named = (key: string): readonly string[] => (labels[`${kind}.${key}`] ?? labels[key] ?? []).map(fold);
  const own = Object.entries(table.fields)
    .filter(([key]) => !ownWords.has(key))
    .map(
      ([key, field]): Target => ({
        path: key,
        key,
        field,
        labels: [...new Set([...named(key), fold(key.replaceAll('-', ' '))])],
      }),
    );
  const length: Field = { is: 'quantity', about: { description: '' }, dimension: 'length' };
  const count: Field = { is: 'notation', about: { description: '' }, notation: 'count' };
  return kind === 'propeller'
    ? [
        ...own,
        ...parts.map(
          (key): Target => ({ path: key, key, field: key === '~blades' ? count : length, labels: named(key) }),
        ),
      ]
    : own;
}

/** Diameter, pitch and blades named one by one make the size. */
function assembleSize(kind: string, prefix: string, found: Map<string, Proposal>): void {
  if (kind !== 'propeller') return;
  const [diameter, pitch, blades] = parts.map((part) => found.get(prefix + part));
  for (const part of parts) found.delete(prefix + part);
  if (found.has(`${prefix}size`) || !diameter || !pitch || !blades) return;
  const inches = [diameter, pitch]
    .map(({ value }) => readQuantity(String(value), 'length'))
    .map((read) => (read.ok ? Number((read.value / 0.0254).toFixed(2)) : Number.NaN));
  const value = `${inches[0]}x${inches[1]}x${blades.value}`;
  const words = [...new Set([diameter.words, pitch.words, blades.words])].join(' / ');
  if (readers['propeller-size'](value).ok) found.set(`${prefix}size`, { path: `${prefix}size`, value, words });
}

function placeOf(table: MapField, path: string): number {
  const [first = '', second] = path.split('.');
  const at = Object.keys(table.fields).indexOf(first);
  const inner = table.fields[first];
  return at + (second !== undefined && inner?.is === 'map' ? Object.keys(inner.fields).indexOf(second) / 1000 : 0);
}

/** `(seller DATE)` behind a single figure; what takes no origin is covered by the part's own `source` and `seen`. */
function dated(table: MapField, { path, value }: Proposal, today: string): { value: Written } {
  const field = path
    .split('.')
    .reduce<Field | undefined>((at, key) => (at?.is === 'map' ? at.fields[key] : undefined), table);
  if (typeof value !== 'string' || (field?.is !== 'quantity' && field?.is !== 'notation')) return { value };
  const origin = `${value} (seller ${today})`;
  const fine =
    field.is === 'quantity'
      ? readQuantity(origin, field.dimension).ok
      : field.notation !== 'flag' && field.notation !== 'count' && readers[field.notation](origin).ok;
  return { value: fine ? origin : value };
}

function nameIn(pasted: readonly Pasted[]): string | undefined {
  const line = pasted.find(isTitle)?.value ?? pasted.find((one) => one.key === undefined || one.top)?.words;
  const name = line
    ?.replace(/\s+/g, ' ')
    .replace(/^#+\s*|\s*\|.*$/g, '')
    .trim();
  return name && name.length <= 80 ? name : undefined;
}
