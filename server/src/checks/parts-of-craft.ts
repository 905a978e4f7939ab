/** What is wrong with the parts of a craft as such: a `use:` that leads nowhere, a role that two parts fill. Compares none of their values. */
import type { Craft, LostUse } from '../build/craft';
import { type Finding, fingerprintOf } from '../build/finding';
import { list } from '../build/structure';
import type { Workspace } from '../library/workspace';
import { nearest } from '../text/nearest';

export function lostFindings(workspace: Workspace, craft: Craft): readonly Finding[] {
  return craft.lost.map((lost) => {
    const found = workspace.find(lost.id, craft.file);
    const fixes = found
      ? []
      : nearestParts(workspace, lost).map((id) => ({
          title: `Use \`${id}\``,
          edits: [{ file: craft.file, span: lost.at.span, text: id }],
        }));
    const check = found ? 'part-of-other-kind' : 'part-unknown';
    const words = found
      ? `\`${lost.id}\` is a ${found.kind.replaceAll('-', ' ')}; a ${lost.kind.replaceAll('-', ' ')} is wanted here. Use a part of that kind, or move this line to its own role.`
      : `No parts file of this workspace has \`${lost.id}\`.${fixes[0] ? ` Did you mean ${list(fixes.map((fix) => fix.title.slice(4)))}?` : ' Add it to a parts file, or write its values here.'}`;
    return {
      check,
      severity: 'error' as const,
      message: words,
      at: lost.at,
      related: found ? [{ place: found.at, message: `\`${lost.id}\` is defined here` }] : [],
      fixes,
      fingerprint: fingerprintOf(check, lost.at),
    };
  });
}

function nearestParts(workspace: Workspace, lost: LostUse): readonly string[] {
  const ofKind = [...workspace.parts()].flatMap(([id, parts]) => (parts[0]?.kind === lost.kind ? [id] : []));
  const best = nearest(lost.id, ofKind);
  return best ? [best] : [];
}

export function doubledFindings(craft: Craft): readonly Finding[] {
  return craft.doubled.map(({ role, by }) => {
    const at = { ...by[0]!, path: `parts.${role}` };
    const name = role.replaceAll('-', ' ');
    return {
      check: 'role-filled-twice',
      severity: 'error' as const,
      message: `Two parts of this build are its ${name}: one of its own and one inside \`${by[1]!.path.split('.').at(-1)}\`. Take one of them out.`,
      at,
      related: [{ place: by[1]!, message: `this one holds a ${name} too` }],
      fixes: [],
      fingerprint: fingerprintOf('role-filled-twice', at),
    };
  });
}
