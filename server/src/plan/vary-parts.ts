/** Finds the parts that are to be tried in a role of a craft, by their ids in the parts files. Compares nothing. */
import type { Craft, Role } from '../build/craft';
import type { Facts } from '../build/fact';
import { type FindPart, readMap } from '../build/read-facts';
import type { Workspace } from '../library/workspace';
import { roleKinds } from '../vocabulary/generated/fields';

export type PartsFound =
  | {
      readonly ok: true;
      readonly of: Role | 'pack';
      readonly parts: readonly { readonly id: string; readonly facts: Facts }[];
    }
  | { readonly ok: false; readonly why: string };

/** @param words the role: `motors`, `parts.motors`, `pack`, `battery`, `packs.light` */
export function partsToTry(workspace: Workspace, craft: Craft, words: string, ids: readonly string[]): PartsFound {
  const role = words.replace(/^parts\./, '').replace(/^(?:battery|packs(?:\..*)?)$/, 'pack');
  const of = role as Role | 'pack';
  if (of !== 'pack' && (!Object.hasOwn(roleKinds, role) || ['adapters', 'fasteners', 'extras'].includes(role)))
    return {
      ok: false,
      why: `\`${words}\` is no role in which parts can be tried. Say for example \`motors\`, \`propellers\` or \`pack\`.`,
    };
  if (of !== 'pack' && !(craft.roles as Readonly<Record<string, unknown>>)[role])
    return { ok: false, why: `The build has no \`${role}\`.` };
  const kind = of === 'pack' ? 'battery' : roleKinds[of];
  const find: FindPart = (other) => (other === undefined ? undefined : workspace.find(other, craft.file)?.layer);
  const parts: { id: string; facts: Facts }[] = [];
  for (const id of ids) {
    const found = workspace.find(id, craft.file);
    if (!found) return { ok: false, why: `No parts file of this workspace has \`${id}\`.` };
    if (kind === undefined || found.kind !== kind)
      return {
        ok: false,
        why: `\`${id}\` is a ${found.kind.replaceAll('-', ' ')}; a ${(kind ?? role).replaceAll('-', ' ')} is wanted here.`,
      };
    const facts = readMap([found.layer], find);
    if (facts) parts.push({ id, facts });
  }
  return { ok: true, of, parts };
}
