/** Looks a fact up by the path a check names it with. Decides nothing about its absence. */
import type { Craft, Pack } from '../build/craft';
import { worked } from '../plan/worked';
import type { Need } from './check';

export function findFact(need: Need, craft: Craft, pack: Pack | undefined): unknown {
  const [head, ...rest] = need.split('.') as [string, ...string[]];
  if (head === 'worked') return worked(craft, pack, need as never);
  let at: unknown = headOf(head, craft, pack);
  for (const key of rest) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Record<string, unknown>)[key];
  }
  return at;
}

/** What the first word of a path stands for; nothing when the craft has no such part. */
export function headOf(head: string, craft: Craft, pack: Pack | undefined): unknown {
  if (head === 'pack') return pack?.facts;
  if (head === 'bench') return craft.bench;
  if (head === 'build') return craft.said;
  if (head === 'setup' || head === 'flight' || head === 'goals') return craft.said[head] ?? {};
  return (craft.roles as Record<string, unknown>)[head];
}
