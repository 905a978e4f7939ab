/** Proposes the fields of a part from text pasted from a seller's page, each with the words it came from. Guesses nothing and writes no file. */
import { readers } from '../../text/notation';
import { readQuantity } from '../../text/quantity';
import type { Field, MapField } from '../../vocabulary/field';
import { partsField } from '../../vocabulary/generated/fields';
import { assemble, pieceFields, piecesOf } from './assemble';
import { isElsewhere, isOfTerms, type Meant, mayBeAbout, meantBy } from './by-meaning';
import { inSentences, inTitles, labels, notOurs, ofTheWhole, saidByName, titleLabels } from './labels';
import { nameAField } from './meanings';
import { readAs, type Written } from './read-value';
import { statementsOf } from './statements';
import { aboutOf } from './stems';
import { clausesOf, cut, fold, halfWidth, type Pasted, sentencesOf } from './text';
import { unlabelled } from './unlabelled';
import { type Heard, unreadLines } from './unread';

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
  /** Lines and clauses of the page that hold a number, or begin with a known label, and that no field was read from. */
  readonly unread: readonly string[];
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

/** What the builder chooses among the things that the part can do, by `kind.field`. */
const chosen: ReadonlySet<string> = new Set([
  'receiver.protocol',
  'video-transmitter.level',
  'video-transmitter.channel',
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
  if (!table) return { kind, name: undefined, fields: [], unread: [] };
  const all = cut(text);
  const pasted = all.filter((one) => !one.others);
  const inside = halves[kind];
  const found = new Map<string, Proposal>();
  const heard: Heard[] = [];
  if (!inside) collect(kind, '', table, pasted, found, heard);
  else {
    // A page of two boards has a heading for each; what stands before the first is about both together.
    const sections = new Map<string, Pasted[]>();
    let section = '';
    for (const one of pasted) {
      const heading = fold(one.words);
      // `ESC connector: 8-pin` is a line about the board that is being described.
      if (heading.length < 40 && (one.key === undefined || one.value === '' || one.joined))
        section = Object.entries(inside).find(([, pattern]) => pattern.test(heading))?.[0] ?? section;
      sections.set(section, [...(sections.get(section) ?? []), one]);
    }
    for (const [name, lines] of sections) {
      const field = name === '' ? table : table.fields[name];
      if (field?.is === 'map') collect(name || kind, name === '' ? '' : `${name}.`, field, lines, found, heard);
    }
  }
  const order = [...found.values()].map((one) => ({ one, at: placeOf(table, one.path) })).sort((a, b) => a.at - b.at);
  const fields: readonly Proposal[] = order.map(({ one }) => ({ ...one, ...dated(table, one, today) }));
  const name = nameIn(pasted);
  return { kind, name, fields, unread: unreadLines(kind, all, heard, name) };
}

function collect(
  kind: string,
  prefix: string,
  table: MapField,
  pasted: readonly Pasted[],
  found: Map<string, Proposal>,
  heard: Heard[],
): void {
  const targets = targetsOf(kind, table);
  const take = (target: Target, value: Written | undefined, words: string, from?: string): void => {
    if (value === undefined || (target.key === 'weight' && ofTheWhole[kind]?.test(fold(words)))) return;
    heard.push({ words, value: from ?? value });
    const path = `${prefix}${target.path}`;
    const known = found.get(path);
    if (!known) found.set(path, { path, value, words });
    else if (target.field.is === 'table' && isApart(known.value, value))
      // Each rail on a line of its own.
      found.set(path, {
        ...known,
        value: { ...(known.value as object), ...(value as object) },
        words: `${known.words} / ${words}`,
      });
    else if (target.field.is === 'table' && isMore(known.value, value)) found.set(path, { path, value, words });
    else if (!known.differs && JSON.stringify(known.value) !== JSON.stringify(value))
      found.set(path, { ...known, differs: { value, words } });
  };
  const read = (target: Target, text: string, aside: string, labelled: boolean): Written | undefined =>
    readAs({ key: target.key, field: target.field, text, aside, labelled });
  // Named values first: they are surer than what a sentence or a title says.
  for (const { key, aside, value, words } of pasted) {
    if (key === undefined) continue;
    const label = plainKey(targets, key);
    if (value !== '' && knownKey(targets, label)) heard.push({ words, labelled: true });
    for (const target of targets)
      if (target.labels.includes(label)) take(target, read(target, value, aside, true), words);
    const volts = railOf(key);
    const rails = targets.find((target) => target.key === 'regulators');
    if (volts !== undefined && rails) take(rails, read(rails, `${volts}V ${value}`, aside, true), words);
  }
  for (const one of pasted) {
    if (one.joined || (one.key !== undefined && !one.box && isAboutOthers(one.key))) continue;
    const place = one.box ? 'box' : 'text';
    for (const sentence of one.box ? one.words.split(/[,;]\s*/) : sentencesOf(one.words))
      for (const { field, text, match } of unlabelled(kind, bulletless(halfWidth(sentence)), place)) {
        const target = targets.find(({ key }) => key === field);
        if (target && !found.has(prefix + target.path))
          take(target, read(target, text, '', true), near(sentence.trim(), text), match);
      }
  }
  const meant = meantBy(kind, targets, pasted.filter((one) => !one.box).flatMap(statementsOf));
  const takeMeant = ({ target, value, words }: Meant<Target>): void => {
    const known = found.get(prefix + target.path);
    // A half that is named twice is told apart from one that is named once.
    if (
      !known ||
      target.key.startsWith('~') ||
      (target.field.is === 'table' && (isApart(known.value, value) || isMore(known.value, value)))
    )
      take(target, value, words);
  };
  const isSure = ({ target, sure }: Meant<Target>): boolean => sure !== 'unit' && !isOfTerms(target.field);
  for (const one of meant.filter(isSure)) takeMeant(one);
  for (const one of pasted) {
    const spoken =
      one.key === undefined || isTitle(one) ? one.value : knownKey(targets, one.key) ? one.value : undefined;
    if (spoken === undefined || one.box) continue;
    for (const clause of clausesOf(spoken).filter((one) => !isElsewhere(one)))
      inClause(
        targets,
        clause,
        one.key === undefined,
        (target, value) =>
          found.has(prefix + target.path) ||
          !mayBeAbout(kind, target.key, clause) ||
          take(target, value, one.key === undefined && one.words.includes(clause.trim()) ? clause.trim() : one.words),
        read,
      );
  }
  for (const one of pasted) {
    if (one.box) continue;
    const named = one.key !== undefined && (knownKey(targets, one.key) || nameAField(kind, aboutOf(one.key)));
    const title = (one.top && !named) || isTitle(one);
    const keys = [
      ...(title ? (inTitles[kind] ?? []) : []),
      ...(one.key === undefined ? (inSentences[kind] ?? []) : []),
    ];
    // A paragraph is told by its sentences, so that the words behind a value are few.
    for (const said of one.words.length > 100 && one.key === undefined ? sentencesOf(one.words) : [undefined])
      for (const target of targets) {
        if (!keys.includes(target.key) || found.has(prefix + target.path)) continue;
        const flag = saidByName[target.key];
        const text = said ?? (isTitle(one) ? one.value : one.words);
        // `Not compatible with analog` says what it is not.
        if (!title && aboutOf(text).has('without')) continue;
        take(
          target,
          flag ? (flag.test(fold(text)) ? 'yes' : undefined) : read(target, text, '', false),
          said?.trim() ?? one.words,
        );
      }
  }
  for (const one of meant.filter((each) => !isSure(each))) takeMeant(one);
  assemble(kind, prefix, found);
}

/** Of a long sentence, the words from a little before the figure on. */
function near(sentence: string, said: string): string {
  const at = sentence.indexOf(/\d+/.exec(said)?.[0] ?? sentence);
  return sentence.length <= 100 || at < 40 ? sentence : sentence.slice(sentence.indexOf(' ', at - 40) + 1);
}

const bulletless = (text: string): string => text.replace(/^\s*[^\p{L}\p{N}~φø"(]+\s*/iu, '');

/** `BEC 5V` and `5V output` name the rail in the label. */
function railOf(key: string): string | undefined {
  const match =
    /^(?:bec|regulator|output|rail|sortie|salida|uscita|ausgang|wyjscie)s?(?: bec)? (\d{1,2}(?:[.,]\d)?) ?v$|^(\d{1,2}(?:[.,]\d)?) ?v (?:bec|output|rail|regulator|sortie|salida|uscita|ausgang)s?$/.exec(
      key,
    );
  return (match?.[1] ?? match?.[2])?.replace(',', '.');
}

/** Whether the second says more of the same table than the first, and nothing else of what the first says. */
const isMore = (a: Written, b: Written): boolean =>
  typeof a === 'object' &&
  typeof b === 'object' &&
  Object.keys(b).length > Object.keys(a).length &&
  Object.entries(a).every(
    ([key, value]) => JSON.stringify((b as Record<string, Written>)[key]) === JSON.stringify(value),
  );

const isApart = (a: Written, b: Written): boolean =>
  typeof a === 'object' && typeof b === 'object' && Object.keys(b).every((key) => !Object.hasOwn(a, key));

/** Words around a label that leave its meaning alone. */
const loose =
  /^(?:approx|about|ca|nominal|typical|typ|product|item|unit|flight|your|the) | (?:approx|about|ca|typ|per motor|per channel|per piece|each|pro stuck|par moteur|por motor)$/g;

const plainKey = (targets: readonly Target[], key: string): string =>
  knownKey(targets, key) ? key : key.replace(loose, '').trim();

/** What else to buy has figures of its own. */
const isAboutOthers = (key: string): boolean =>
  /^(?:recommend|suggest|empfohl|conseill|recomend|consigliat|zalecan|matching|compatible|shipping|package)/.test(
    key,
  ) || notOurs.some((label) => fold(label) === key);

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
      const ahead = target.field.is === 'quantity' ? lastFigure(before) : before;
      take(target, read(target, behind, '', labelled) ?? read(target, ahead, '', /\d\s*$/.test(before)));
    }
  });
}

/** `130C / 260C burst`: the figure right before the label is its own, unless it ends a range. */
function lastFigure(before: string): string {
  const last = /(?<![\d.])\d+(?:\.\d+)?[^\d]*$/.exec(before);
  return last && !/(?:[-–—~]|\b(?:to|bis|a))\s*$/.test(before.slice(0, last.index)) ? last[0] : before;
}

function indexOfWord(text: string, word: string): number {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1))
    if (!/[a-z0-9]/.test(text[at - 1] ?? ' ') && !/[a-z0-9]/.test(text[at + word.length] ?? ' ')) return at;
  return -1;
}

function targetsOf(kind: string, table: MapField): readonly Target[] {
  const named = (key: string): readonly string[] => (labels[`${kind}.${key}`] ?? labels[key] ?? []).map(fold);
  const own = Object.entries(table.fields)
    .filter(([key]) => !ownWords.has(key) && !chosen.has(`${kind}.${key}`))
    .map(
      ([key, field]): Target => ({
        path: key,
        key,
        field,
        labels: [...new Set([...named(key), fold(key.replaceAll('-', ' '))])],
      }),
    );
  const halves = piecesOf(kind).map(
    ([key, is]): Target => ({ path: key, key, field: pieceFields[is], labels: named(key) }),
  );
  return [...own, ...halves];
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
  // A heading is one line; in prose the product is named where it is brought forward.
  if (name && name.length <= 80) return name;
  return /\b(?:[Mm]eet|[Ii]ntroducing|[Pp]resenting|[Aa]ll-new|[Tt]he new)\s+(?:the\s+)?(?:all-new\s+)?((?:[\p{Lu}\d][\p{L}\d-]*\s+){0,5}[\p{Lu}\d][\p{L}\d-]*)(?=[,.!]|\s+(?:is|an?|–|-)\s)/u.exec(
    name ?? '',
  )?.[1];
}
