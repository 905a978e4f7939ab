/** Text from a seller's page as an entry to look over, and the edit that puts the entry into the nearest parts file. Writes nothing itself. */
import type { TextEdit } from 'vscode-languageserver-types';
import { entryText } from '../library/seller-text/entry';
import type { Missing } from '../library/seller-text/missing';
import type { Proposal } from '../library/seller-text/propose';
import type { Workspace } from '../library/workspace';
import { partDraft } from '../report/part-draft';
import { indentOf, lineBreakOf, positionAt } from '../text/lines';
import { nearestParts } from './refactor';

export interface Draft {
  readonly id: string;
  /** A parts file of its own, each value with its words behind it. */
  readonly text: string;
  readonly fields: readonly Proposal[];
  readonly missing: readonly Missing[];
}

export function draftPart(workspace: Workspace, kind: string, pasted: string, today: string, typical: boolean): Draft {
  const { id, proposed, missing, notes } = partDraft(kind, pasted, {
    today,
    typical,
    // A draft that is still looked over takes no id.
    taken: (taken) => (workspace.parts().get(taken) ?? []).some((part) => !part.at.file.startsWith('untitled:')),
  });
  const head = 'dryfit: parts\n\n# Look each value over: behind it stand the words it came from.\nparts:\n';
  const tail = notes.map((note) => `# ${note}\n`).join('');
  const text = `${head}${entryText(proposed, { id, today, words: true })}\n${tail}`;
  return { id, text, fields: proposed.fields, missing };
}

/** The entries of a draft, put behind the last part of the parts file nearest to `near`; none where there is no such file. */
export function addToParts(
  workspace: Workspace,
  near: string,
  draft: string,
): { uri: string; edit: TextEdit } | undefined {
  const entries = /^parts:[^\n]*\n((?:[ \t]+[^\n]*\n?|\s*\n)*)/m.exec(draft.replaceAll('\r\n', '\n'))?.[1]?.trimEnd();
  const target = entries && nearestParts(workspace, near, /^\s*kind: *(\S+)/m.exec(entries)?.[1] ?? '');
  if (!target) return undefined;
  const { text, lines } = target.file;
  const end = lineBreakOf(text);
  const first = target.slot.kids[0];
  const indent = first?.keySpan ? indentOf(text, first.keySpan.start) : '  ';
  const moved = entries.split('\n').map((line) => line.replace(/^ {2}/, indent));
  const lead = text === '' || text.endsWith('\n') ? '' : end;
  const at = positionAt(lines, text.length);
  return {
    uri: target.file.uri,
    edit: { range: { start: at, end: at }, newText: `${lead}${end}${moved.join(end)}${end}` },
  };
}
