/** Parts of one kind, gathered by what others must match: cells, holes, shafts, plugs, bands. Decides nothing about fit. */
import type { Slot } from '../build/slot';
import { textOf } from '../text/tree';
import type { Field } from '../vocabulary/field';
import type { Workspace } from './workspace';

/** Notations whose values either match or don't; a weight or a Kv has no such sides. */
const matched: ReadonlySet<string> = new Set([
  'cells',
  'pack-cells',
  'propeller-size',
  'board-mount',
  'motor-mount',
  'shaft',
  'screw',
  'thread',
  'supply-range',
  'frequency-range',
  'flag',
]);

/**
 * Ids of the parts of a kind, those that say the same where others must match together. Made once for as long as no
 * library changes, whatever its size.
 */
export function alike(workspace: Workspace, kind: string): readonly (readonly string[])[] {
  const known = gathered.get(workspace);
  const made = known?.at === workspace.version ? known : { at: workspace.version, byKind: gather(workspace) };
  gathered.set(workspace, made);
  return made.byKind.get(kind) ?? [];
}

interface Gathered {
  readonly at: number;
  readonly byKind: ReadonlyMap<string, readonly (readonly string[])[]>;
}

const gathered = new WeakMap<Workspace, Gathered>();

function gather(workspace: Workspace): Gathered['byKind'] {
  const kinds = new Map<string, Map<string, string[]>>();
  for (const [id, parts] of workspace.parts())
    for (const kind of new Set(parts.map((part) => part.kind))) {
      const groups = kinds.get(kind) ?? new Map<string, string[]>();
      kinds.set(kind, groups);
      const key = sidesOf(parts[0]!.layer.slot);
      const group = groups.get(key);
      if (group) group.push(id);
      else groups.set(key, [id]);
    }
  return new Map([...kinds].map(([kind, groups]) => [kind, [...groups.values()]]));
}

const sidesOf = (part: Slot): string =>
  part.kids
    .filter(({ key, field }) => key === 'use' || isSide(field))
    .map((kid) => `${kid.key}=${wordsOf(kid)}`)
    .sort()
    .join('\n');

const isSide = (field: Field | undefined): boolean =>
  field?.is === 'list'
    ? isSide(field.of)
    : field?.is === 'term' || (field?.is === 'notation' && matched.has(field.notation));

const wordsOf = (slot: Slot): string =>
  slot.kids.length > 0 ? slot.kids.map(wordsOf).join(',') : (textOf(slot.node) ?? '');
