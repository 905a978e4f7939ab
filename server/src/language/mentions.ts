/** Every place of the workspace that names a part by its id: where it is defined, used, owned or offered. Answers for names, not for findings. */
import type { Slot } from '../build/slot';
import { kidOf } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import type { Span } from '../text/span';
import { fileKinds } from '../vocabulary';

export interface Mention {
  readonly id: string;
  readonly as: 'definition' | 'use' | 'owned' | 'offer';
  readonly file: SourceFile;
  readonly span: Span;
}

/** All mentions, or only those in some files. */
export function mentions(workspace: Workspace, id?: string): readonly Mention[] {
  const found: Mention[] = [];
  for (const kind of fileKinds)
    for (const { file, document } of workspace.documents(kind))
      if (document.slot && (id === undefined || file.text.includes(id))) collect(file, kind, document.slot, found);
  return id === undefined ? found : found.filter((mention) => mention.id === id);
}

export function mentionsIn(file: SourceFile): readonly Mention[] {
  const found: Mention[] = [];
  for (const document of file.documents)
    if (document.slot && document.kind) collect(file, document.kind, document.slot, found);
  return found;
}

/** The mention under an offset, if any. */
export const mentionAt = (file: SourceFile, offset: number): Mention | undefined =>
  mentionsIn(file).find((mention) => mention.span.start <= offset && offset <= mention.span.end);

function collect(file: SourceFile, kind: (typeof fileKinds)[number], root: Slot, found: Mention[]): void {
  const keys = (slot: Slot | undefined, as: Mention['as']): void => {
    for (const kid of slot?.kids ?? []) if (kid.keySpan) found.push({ id: kid.key, as, file, span: kid.keySpan });
  };
  if (kind === 'parts') keys(kidOf(root, 'parts'), 'definition');
  if (kind === 'bench') keys(kidOf(root, 'owned'), 'owned');
  if (kind === 'shops') for (const shop of kidOf(root, 'shops')?.kids ?? []) keys(kidOf(shop, 'offers'), 'offer');
  const walk = (slot: Slot): void => {
    const { field, node } = slot;
    if (field?.is === 'text' && field.reference === 'part' && node.is === 'scalar' && !node.via)
      found.push({ id: node.text, as: 'use', file, span: inner(file, node.span, node.text) });
    for (const kid of slot.kids) walk(kid);
  };
  walk(root);
}

/** The id itself, without quotes around it. */
function inner(file: SourceFile, span: Span, text: string): Span {
  const at = file.text.indexOf(text, span.start);
  return at >= 0 && at + text.length <= span.end ? { start: at, end: at + text.length } : span;
}
