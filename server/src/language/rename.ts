/** Renames a part id wherever it is named, or a pack within its build. Edits only the names themselves. */
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import { kidOf } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import type { Span } from '../text/span';
import { locate, pathOf } from './locate';
import { mentionAt, mentions } from './mentions';
import { type Files, rangeOf } from './protocol';

export interface Nameable {
  readonly span: Span;
  readonly text: string;
}

/** What could be renamed at an offset. */
export function nameAt(workspace: Workspace, uri: string, offset: number): Nameable | undefined {
  const file = workspace.get(uri);
  if (!file) return undefined;
  const mention = mentionAt(file, offset);
  // An id that nothing defines is a mistake, not a name.
  if (mention && workspace.find(mention.id, uri)) return { span: mention.span, text: mention.id };
  const pack = packAt(file, offset);
  return pack && { span: pack.here, text: pack.name };
}

/** Why a new name will not do. */
export class CannotRename extends Error {}

export function rename(
  workspace: Workspace,
  files: Files,
  uri: string,
  offset: number,
  name: string,
): WorkspaceEdit | undefined {
  const file = workspace.get(uri);
  if (!file) return undefined;
  if (!/^[A-Za-z0-9][\w.-]*$/.test(name))
    throw new CannotRename(
      `\`${name}\` cannot be an id: use letters, digits, \`-\`, \`_\` and \`.\`, starting with a letter or a digit.`,
    );
  const changes: Record<string, TextEdit[]> = {};
  const put = (target: SourceFile, span: Span): void => {
    const spelled = files.spelled(target.uri);
    changes[spelled] ??= [];
    changes[spelled].push({ range: rangeOf(target, span), newText: name });
  };
  const mention = mentionAt(file, offset);
  if (mention && workspace.find(mention.id, uri)) {
    if (name !== mention.id && workspace.parts().has(name))
      throw new CannotRename(`There is a part \`${name}\` already. Take another name.`);
    for (const one of mentions(workspace, mention.id)) put(one.file, one.span);
    return { changes };
  }
  const pack = packAt(file, offset);
  if (!pack) return undefined;
  if (name !== pack.name && pack.others.includes(name))
    throw new CannotRename(`There is a pack \`${name}\` already. Take another name.`);
  for (const span of pack.all) put(file, span);
  return { changes };
}

function packAt(
  file: SourceFile,
  offset: number,
): { name: string; here: Span; all: readonly Span[]; others: readonly string[] } | undefined {
  const located = locate(file, offset);
  if (located?.document.kind !== 'build') return undefined;
  const path = pathOf(located);
  const packs = kidOf(located.document.slot, 'packs')?.kids ?? [];
  const chosen = kidOf(kidOf(located.document.slot, 'flight'), 'pack');
  const onKey = path[0] === 'packs' && path.length === 2 && located.on === 'key';
  const onChoice = path.join('.') === 'flight.pack' && located.on === 'value';
  if (!onKey && !onChoice) return undefined;
  const name = onKey ? path[1]! : located.slot.node.is === 'scalar' ? located.slot.node.text : '';
  const key = packs.find((pack) => pack.key === name)?.keySpan;
  if (!key) return undefined;
  const all = chosen?.node.is === 'scalar' && chosen.node.text === name ? [key, chosen.node.span] : [key];
  return { name, here: onKey ? key : located.slot.node.span, all, others: packs.map((pack) => pack.key) };
}
