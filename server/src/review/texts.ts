/** The files of one version of a repository, by address; and what is read of two such versions. Knows no git and no disk. */
import type { SourceFile } from '../build/source-file';
import { Workspace } from '../library/workspace';
import { onlyBuilds } from './quick-look';

/** Text of every build file by its address, as `file:///builds/wren.dryfit.yaml`. */
export type Texts = ReadonlyMap<string, string>;

export interface Side {
  readonly texts: Texts;
  readonly workspace: Workspace;
}

export interface Sides {
  readonly before: Side;
  readonly after: Side;
}

/** Reads all that other files may look at, and what differs; builds that are the same are read when asked for. */
export function sidesOf(before: Texts, after: Texts, beforeEach?: () => void): Sides {
  const sides = {
    before: { texts: before, workspace: new Workspace() },
    after: { texts: after, workspace: new Workspace() },
  };
  for (const [uri, text] of before) {
    beforeEach?.();
    if (after.get(uri) !== text || !onlyBuilds(text)) sides.before.workspace.set(uri, text);
  }
  for (const [uri, text] of after) {
    beforeEach?.();
    const known = before.get(uri) === text ? sides.before.workspace.get(uri) : undefined;
    if (before.get(uri) === text && !known) continue;
    // What is worked out of a build belongs to one workspace; what other kinds say may be read once for both.
    if (known?.documents.every((document) => document.kind !== 'build')) sides.after.workspace.take(known);
    else sides.after.workspace.set(uri, text);
  }
  return sides;
}

/** Makes sure that a file is read on both sides; the same text only once. */
export function readSame({ before, after }: Sides, uri: string): SourceFile | undefined {
  const text = before.texts.get(uri);
  if (text === undefined) return undefined;
  before.workspace.set(uri, text);
  const file = before.workspace.get(uri)!;
  if (!after.workspace.get(uri)) after.workspace.take(file);
  return file;
}

/** Done with a build that nothing else looks at: thousands need not be in memory at once. */
export function letGo({ before, after }: Sides, uri: string): void {
  for (const { workspace, texts } of [before, after]) if (onlyBuilds(texts.get(uri) ?? '')) workspace.delete(uri);
}
