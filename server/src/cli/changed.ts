/** Which files a change touches: those that changed, and builds that use something that did. Checks nothing. */
import path from 'node:path';
import { differences } from '../review/differing';
import { sidesOf } from '../review/texts';
import { openRepository, pathOfUri } from './git';

/** Absolute paths of files in the working tree. */
export function changedSince(cwd: string, ref: string): ReadonlySet<string> {
  const repository = openRepository(cwd);
  const sides = sidesOf(repository.at(repository.commit(ref)).texts, repository.workingTree().texts);
  const { builds, others } = differences(sides);
  const uris = [...builds].flatMap(({ after }) => after?.uri ?? []);
  for (const { after } of others) if (after !== undefined) uris.push(after);
  return new Set(uris.map((uri) => path.join(repository.root, pathOfUri(uri))));
}
