/** Looks facts up by the paths that checks name them with. Decides nothing about their absence. */
import type { Craft, Pack } from '../build/craft';
import { worked } from '../plan/worked';
import type { Need } from './check';

export type FindFact = (craft: Craft, pack: Pack | undefined) => unknown;

/** The paths are a few hundred constants, looked up at every keystroke; each is taken apart once. */
const found = new Map<string, FindFact>();

export function finderOf(need: Need): FindFact {
  const known = found.get(need);
  if (known) return known;
  const made = makeFinder(need);
  found.set(need, made);
  return made;
}

function makeFinder(need: Need): FindFact {
  const [head, ...keys] = need.split('.');
  if (head === 'worked') return (craft, pack) => worked(craft, pack, need as never);
  const from = headFinder(head!);
  return (craft, pack) => {
    let at = from(craft, pack);
    for (const key of keys) {
      if (typeof at !== 'object' || at === null) return undefined;
      at = (at as Readonly<Record<string, unknown>>)[key];
    }
    return at;
  };
}

const nothingSaid = {};

/** What the first word of a path stands for; it finds nothing when the craft has no such part. */
export function headFinder(head: string): FindFact {
  if (head === 'pack') return (_, pack) => pack?.facts;
  if (head === 'bench') return (craft) => craft.bench;
  if (head === 'shops') return (craft) => craft.shops[0];
  if (head === 'build') return (craft) => craft.said;
  if (head === 'setup' || head === 'flight' || head === 'goals') return (craft) => craft.said[head] ?? nothingSaid;
  return (craft) => (craft.roles as Readonly<Record<string, unknown>>)[head];
}
