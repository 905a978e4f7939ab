/** Where a part id is defined. Follows `use:` and the keys of `owned:` and `offers:`. */
import type { LocationLink } from 'vscode-languageserver-types';
import type { Workspace } from '../library/workspace';
import { locate, pathOf } from './locate';
import { type Files, locationOf, rangeOf } from './protocol';

export function definition(workspace: Workspace, files: Files, uri: string, offset: number): readonly LocationLink[] {
  const file = workspace.get(uri);
  const located = file && locate(file, offset);
  if (!file || !located) return [];
  const id = partIdAt(located);
  const part = id === undefined ? undefined : workspace.find(id.text, uri);
  if (!id || !part) return [];
  const { uri: targetUri, range } = locationOf(files, part.at);
  return [{ targetUri, targetRange: range, targetSelectionRange: range, originSelectionRange: rangeOf(file, id.span) }];
}

function partIdAt(
  located: NonNullable<ReturnType<typeof locate>>,
): { text: string; span: { start: number; end: number } } | undefined {
  const { slot, on } = located;
  if (
    on === 'value' &&
    slot.key === 'use' &&
    slot.node.is === 'scalar' &&
    slot.field?.is === 'text' &&
    slot.field.reference === 'part'
  )
    return { text: slot.node.text, span: slot.node.span };
  const parent = pathOf(located).at(-2);
  if (on === 'key' && slot.keySpan && (parent === 'owned' || parent === 'offers'))
    return { text: slot.key, span: slot.keySpan };
  return undefined;
}
