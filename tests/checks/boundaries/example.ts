/** A check's bad example with other values in it, as a text to analyse. Knows no check. */
import { type Document, parseAllDocuments } from 'yaml';
import { unmark } from '../../support/marked';
import type { With } from './boundary';

const parsed = new Map<string, readonly Document[]>();

/** The documents of a text, every scalar as its source text; parsed once, as many values are put in. */
function documentsOf(marked: string): readonly Document[] {
  const known =
    parsed.get(marked) ??
    (parseAllDocuments(unmark(marked).text, { schema: 'failsafe', version: '1.2' }) as Document[]);
  parsed.set(marked, known);
  return known.map((one) => one.clone());
}

export function changed(marked: string, values: With): string {
  const documents = documentsOf(marked);
  for (const [where, value] of Object.entries(values)) {
    const [head, ...rest] = where.split('.') as [string, ...string[]];
    const apart = head === 'bench' || head === 'shops';
    const document = documents.find((one) => one.get('dryfit') === (apart ? head : 'build'));
    if (!document) throw new Error(`the example has no ${head}`);
    // A list is counted from nothing, contacts of a socket from one.
    const path = (apart ? rest : [head, ...rest]).map((key) => (key === '0' ? 0 : key));
    if (value === undefined) {
      if (document.hasIn(path)) document.deleteIn(path);
    } else document.setIn(path, value);
  }
  return documents.map((one) => String(one).replace(/^---\n/, '')).join('---\n');
}

/** Paths and texts of all values of the build, its bench and its shops. */
export function valuesOf(marked: string): readonly (readonly [path: string, text: string])[] {
  return documentsOf(marked).flatMap((document) => {
    const kind = String(document.get('dryfit'));
    const head = kind === 'build' ? '' : `${kind}.`;
    return leaves(document.toJS()).map(([path, text]) => [`${head}${path}`, text] as const);
  });
}

function leaves(tree: unknown, above = ''): readonly (readonly [string, string])[] {
  if (typeof tree === 'string') return [[above, tree]];
  if (typeof tree !== 'object' || tree === null) return [];
  return Object.entries(tree).flatMap(([key, value]) => leaves(value, above ? `${above}.${key}` : key));
}
