/** Looks a fact up by the path a check names it with. Decides nothing about its absence. */
import type { Craft, Pack } from '../build/craft';
import { worked } from '../plan/worked';
import type { Need } from './check';

/** The paths are a few hundred constants; each is taken apart once. */
const steps = new Map<Need, readonly string[]>();

export function stepsOf(need: Need): readonly string[] {
  let known = steps.get(need);
  if (!known) {
    known = need.split('.');
    steps.set(need, known);
  }
  return known;
}

export function findFact(need: Need, craft: Craft, pack: Pack | undefined): unknown {
  const path = stepsOf(need);
  if (path[0] === 'worked') return worked(craft, pack, need as never);
  let at: unknown = headOf(path[0]!, craft, pack);
  for (let i = 1; i < path.length; i++) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Record<string, unknown>)[path[i]!];
  }
  return at;
}

const nothingSaid = {};

/** What the first word of a path stands for; nothing when the craft has no such part. */
export function headOf(head: string, craft: Craft, pack: Pack | undefined): unknown {
  if (head === 'pack') return pack?.facts;
  if (head === 'bench') return craft.bench;
  if (head === 'shops') return craft.shops[0];
  if (head === 'build') return craft.said;
  if (head === 'setup' || head === 'flight' || head === 'goals') return craft.said[head] ?? nothingSaid;
  return (craft.roles as Record<string, unknown>)[head];
}
