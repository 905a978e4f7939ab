/** What is wrong with a file before any part is compared: unknown keys, missing units, wrong words. One finding for one mistake. */
import { nearest } from '../text/nearest';
import { readers } from '../text/notation';
import { type Misread, readQuantity } from '../text/quantity';
import { type Span, span } from '../text/span';
import { type Breach, fileKinds } from '../vocabulary';
import { type Field, type LeafField, spoken, type TermField } from '../vocabulary/field';
import { type Finding, type Fix, fingerprintOf, type Severity } from './finding';
import type { Place } from './place';
import { placeOf } from './read-facts';
import { fieldsAt, type Slot } from './slot';
import type { FileDocument, SourceFile } from './source-file';

export function structureFindings(file: SourceFile): readonly Finding[] {
  const found: Finding[] = [];
  for (const fault of file.faults) {
    const at: Place = { file: file.uri, span: fault.span, path: `${fault.id}` };
    found.push({
      check: fault.id,
      severity: fault.id === 'text-cut-short' ? 'information' : 'error',
      message: fault.message,
      at,
      related: fault.related
        ? [{ place: { file: file.uri, span: fault.related.span, path: '' }, message: fault.related.message }]
        : [],
      fixes: fault.fix
        ? [{ title: fault.fix.title, edits: [{ file: file.uri, span: fault.fix.span, text: fault.fix.text }] }]
        : [],
      fingerprint: fingerprintOf(fault.id, at, file.text.slice(fault.span.start, fault.span.end).slice(0, 40)),
    });
  }
  const worthReading = file.faults.every((fault) => fault.id !== 'file-too-large' && fault.id !== 'not-text');
  if (worthReading)
    for (const document of file.documents.length > 0 ? file.documents : [undefined])
      found.push(...documentFindings(file, document));
  return once(found);
}

/** What stands inside an anchor is read at every alias; it is reported where it is written, once. */
function once(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const key = `${finding.check} ${finding.at.span.start} ${finding.message}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function documentFindings(file: SourceFile, document: FileDocument | undefined): readonly Finding[] {
  if (!document?.root)
    return file.faults.length > 0
      ? []
      : [kindMissing(file, span(0, 0), 'This file is empty. Its first line says what it is')];
  const { root, slot } = document;
  const say = (
    check: string,
    severity: Severity,
    place: Place,
    message: string,
    fixes: readonly Fix[] = [],
  ): Finding => ({
    check,
    severity,
    message,
    at: place,
    related: viaOf(file, slot, place),
    fixes,
    fingerprint: fingerprintOf(check, place),
  });
  if (!slot) {
    const first = root.is === 'map' ? root.entries.find((entry) => entry.key === 'dryfit') : undefined;
    if (!first)
      return [kindMissing(file, firstWord(file.text, root.span), 'The first line of a Dryfit file says what it is')];
    const at: Place = {
      file: file.uri,
      span: first.value.is === 'scalar' ? first.value.span : first.keySpan,
      path: 'dryfit',
    };
    const guess = document.saysKind === undefined ? undefined : nearest(document.saysKind, fileKinds);
    const fixes = guess ? [replace(file.uri, at.span, guess)] : [];
    return [
      say(
        'file-kind-unknown',
        'error',
        at,
        `\`dryfit:\` says what the file is: ${list(fileKinds)}.${document.saysKind === undefined ? '' : ` \`${document.saysKind}\` is none of them.`}`,
        fixes,
      ),
    ];
  }
  const bySlot = new Map<string, Slot>();
  const found: Finding[] = [];
  const walk = (at: Slot): void => {
    if (document.breaches.length > 0) bySlot.set(at.pointer, at);
    if (at.node.is === 'empty' && !at.node.broken && at.keySpan && at.field)
      found.push(
        say(
          'value-empty',
          leafLike(at.field) ? 'error' : 'information',
          placeOf({ slot: at, file: file.uri }),
          emptyWords(at),
        ),
      );
    for (const kid of at.kids) walk(kid);
  };
  walk(slot);
  for (const breach of document.breaches) {
    const at = bySlot.get(breach.path);
    if (at) found.push(...wordBreach(file.uri, at, breach, say));
  }
  return found;
}

const leafLike = (field: Field): boolean => field.is !== 'map' && field.is !== 'table' && field.is !== 'by-kind';

function emptyWords(slot: Slot): string {
  const example = slot.field?.about.examples?.[0];
  const what = leafLike(slot.field!) ? 'has no value yet' : 'says nothing yet';
  return `\`${slot.key}\` ${what}. Write it${example ? `, as in \`${example}\`` : ''}, or take the line out.`;
}

function kindMissing(file: SourceFile, at: Span, start: string): Finding {
  const place: Place = { file: file.uri, span: at, path: 'dryfit' };
  const lead = file.text.charCodeAt(0) === 0xfeff ? 1 : 0;
  return {
    check: 'file-kind-missing',
    severity: 'error',
    message: `${start}: \`dryfit: build\` for a craft, or ${list(fileKinds.slice(1).map((kind) => `\`${kind}\``))}.`,
    at: place,
    related: [],
    fixes: [
      {
        title: 'Start with `dryfit: build`',
        edits: [{ file: file.uri, span: span(lead, lead), text: 'dryfit: build\n' }],
      },
    ],
    fingerprint: fingerprintOf('file-kind-missing', place),
  };
}

type Say = (check: string, severity: Severity, place: Place, message: string, fixes?: readonly Fix[]) => Finding;

function wordBreach(file: string, slot: Slot, breach: Breach, say: Say): readonly Finding[] {
  const place = placeOf({ slot, file });
  if (breach.keyword === 'additionalProperties' || breach.keyword === 'propertyNames') {
    const key = String(breach.params.additionalProperty ?? breach.params.propertyName);
    const kid = slot.kids.find((candidate) => candidate.key === key);
    return kid ? [unknownKey(file, slot, kid, say)] : [];
  }
  // A key that is there without a value is told by another finding.
  if (breach.keyword === 'required')
    return slot.kids.some((kid) => kid.key === breach.params.missingProperty)
      ? []
      : [missingKey(slot, String(breach.params.missingProperty), place, say)];
  if (breach.keyword === 'type')
    return slot.field
      ? [say('value-shape', 'error', { ...place, span: slot.keySpan ?? place.span }, shapeWords(slot, slot.field))]
      : [];
  if (breach.keyword === 'enum' || breach.keyword === 'const') {
    if (breach.params.propertyName !== undefined || slot.field?.is !== 'term') return [];
    return [unknownTerm(file, slot, slot.field, say)];
  }
  if (breach.keyword === 'quantity' || breach.keyword === 'notation') {
    const misread =
      slot.node.is === 'scalar' && slot.field ? misreadOf(slot.node.text, slot.field as LeafField) : undefined;
    if (!misread) return [];
    const fixes = (misread.better ?? []).map((text) => replace(file, place.span, text));
    return [say('value-misread', 'error', place, `${capital(misread.why)}.`, slot.node.via ? [] : fixes)];
  }
  return [];
}

function misreadOf(text: string, field: LeafField): Misread | undefined {
  if (field.is === 'quantity') {
    const read = readQuantity(text, field.dimension, field.about.examples?.[0]);
    return read.ok ? undefined : read;
  }
  if (field.is !== 'notation') return undefined;
  const read = readers[field.notation](text);
  return read.ok ? undefined : read;
}

function unknownKey(file: string, slot: Slot, kid: Slot, say: Say): Finding {
  const known = fieldsAt(slot.field, slot.node)?.fields;
  const names = known
    ? Object.keys(known)
    : slot.field?.is === 'table'
      ? (slot.field.keys ?? [slot.field.keyExample])
      : [];
  const free = names.filter((name) => !slot.kids.some((other) => other.key === name));
  const guess = slot.field?.is === 'table' && !slot.field.keys ? undefined : nearest(kid.key, free);
  const at: Place = {
    file,
    span: kid.keySpan ?? kid.node.span,
    key: kid.keySpan,
    path: placeOf({ slot: kid, file }).path,
  };
  const whose = slot.key === '' ? 'this file' : `\`${slot.key}\``;
  const hint = guess
    ? `Did you mean \`${guess}\`?`
    : slot.field?.is === 'table'
      ? `Keys here are written like \`${slot.field.keyExample}\`${slot.field.keys ? `: ${list(slot.field.keys)}` : ''}.`
      : `It is read as nothing. ${names.length > 0 ? `Known here: ${list(free.slice(0, 12))}${free.length > 12 ? ' and more' : ''}.` : ''}`;
  return say(
    'key-unknown',
    'error',
    at,
    `${whose} has no \`${kid.key}\`. ${hint}`,
    guess && kid.keySpan
      ? [{ title: `Rename to \`${guess}\``, edits: [{ file, span: kid.keySpan, text: guess }] }]
      : [],
  );
}

function missingKey(slot: Slot, key: string, place: Place, say: Say): Finding {
  const field = fieldsAt(slot.field, slot.node)?.fields[key];
  const example = field?.about.examples?.[0];
  const whose = slot.key === '' ? 'This file' : `\`${slot.key}\``;
  const at =
    slot.key === '' && slot.node.is === 'map' && slot.node.entries[0]
      ? { ...place, span: slot.node.entries[0].keySpan }
      : place;
  const said =
    slot.field?.is === 'by-kind' && key === 'kind'
      ? ' It decides which fields the part has.'
      : field
        ? ` ${field.about.description}.`
        : '';
  return say(
    'key-missing',
    'error',
    { ...at, path: at.path ? `${at.path}.${key}` : key },
    `${whose} needs \`${key}\`.${said}${example ? ` Write \`${key}: ${example}\`.` : ''}`,
  );
}

function unknownTerm(file: string, slot: Slot, field: TermField, say: Say): Finding {
  const place = placeOf({ slot, file });
  const text = slot.node.is === 'scalar' ? slot.node.text : '';
  const terms = field.terms.map((term) => term.term);
  const guess = nearest(text, terms);
  const known = terms.length <= 14 ? ` Known: ${list(terms)}.` : '';
  const fixes = guess && !slot.node.via ? [replace(file, place.span, guess)] : [];
  return say(
    'term-unknown',
    'error',
    place,
    `\`${text}\` is not a ${spoken(slotName(slot))} known here.${guess ? ` Did you mean \`${guess}\`?` : ''}${known}`,
    fixes,
  );
}

/** An item of a list is called by the list's key. */
const slotName = (slot: Slot): string => (/^\d+$/.test(slot.key) ? slot.pointer.split('/').at(-2)! : slot.key);

function shapeWords(slot: Slot, field: Field): string {
  const example = field.about.examples?.[0];
  const name = slot.key === '' ? 'This file' : `\`${slot.key}\``;
  if (field.is === 'map' || field.is === 'table' || field.is === 'by-kind')
    return `${name} holds several lines of its own. Start a new line below it, indented by two spaces, with \`key: value\`.`;
  if (field.is === 'list') return `${name} is a list${example ? `; write it as in \`${example}\`` : ''}.`;
  return `${name} is a single value${example ? `; write it on the same line, as in \`${slot.key}: ${example}\`` : ', written on the same line'}.`;
}

function replace(file: string, at: Span, text: string): Fix {
  return { title: `Write \`${text}\``, edits: [{ file, span: at, text }] };
}

/** Where an anchored mistake is used. */
function viaOf(file: SourceFile, root: Slot | undefined, place: Place): readonly { place: Place; message: string }[] {
  const uses: Span[] = [];
  const walk = (slot: Slot): void => {
    if (slot.node.via && (slot.node.span === place.span || slot.keySpan === place.span)) uses.push(slot.node.via);
    for (const kid of slot.kids) walk(kid);
  };
  if (root && file.text.includes('*')) walk(root);
  return uses.map((at) => ({ place: { file: file.uri, span: at, path: place.path }, message: 'used here too' }));
}

function firstWord(text: string, at: Span): Span {
  const line = /^[^\s:]+/.exec(text.slice(at.start));
  return span(at.start, at.start + (line?.[0].length ?? 0));
}

export const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
