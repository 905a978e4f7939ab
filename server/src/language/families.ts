/** Free words of a family (radio links, video systems) as this workspace already says them. Knows no word of its own but analog. */
import type { Slot } from '../build/slot';
import type { Workspace } from '../library/workspace';
import { fileKinds } from '../vocabulary';

export interface FamilyWord {
  readonly word: string;
  readonly seen: number;
}

export function familyWords(workspace: Workspace, family: string): readonly FamilyWord[] {
  const counts = new Map<string, number>(family === 'video system' ? [['analog', 0]] : []);
  const walk = (slot: Slot): void => {
    if (slot.field?.is === 'text' && slot.field.family === family && slot.node.is === 'scalar')
      counts.set(slot.node.text, (counts.get(slot.node.text) ?? 0) + 1);
    for (const kid of slot.kids) walk(kid);
  };
  for (const kind of fileKinds)
    for (const { document } of workspace.documents(kind)) if (document.slot) walk(document.slot);
  return [...counts]
    .map(([word, seen]) => ({ word, seen }))
    .sort((a, b) => b.seen - a.seen || (a.word < b.word ? -1 : 1));
}
