/** A share of a large check as plain data, so that it can be handed to another thread: what builds look at, and the builds, one by one. Reads no disk. */
import { type Analysis, analyse } from '../analysis';
import { Workspace } from '../library/workspace';

export interface Share {
  /** Addresses and texts of what any build may look at. */
  readonly around: readonly (readonly [uri: string, text: string])[];
  /** Builds that nothing else looks at. */
  readonly builds: readonly (readonly [uri: string, text: string])[];
  readonly bench: string | undefined;
  readonly today: string;
}

export function analyseShare({ around, builds, bench, today }: Share): readonly Analysis[] {
  const workspace = new Workspace();
  for (const [uri, text] of around) workspace.set(uri, text);
  return builds.map(([uri, text]) => analyseAlone(workspace, uri, text, { bench, today }));
}

/** What was worked out of a build is let go with its turn: of ten thousand it would be gigabytes. */
export function analyseAlone(
  workspace: Workspace,
  uri: string,
  text: string,
  options: Pick<Share, 'bench' | 'today'>,
): Analysis {
  workspace.set(uri, text);
  const analysis = analyse(workspace, uri, options)!;
  workspace.delete(uri);
  return { ...analysis, crafts: [], file: { ...analysis.file, documents: [] } };
}
