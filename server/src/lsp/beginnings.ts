/** Answers the two commands that begin something: a new part from pasted text, a new build. Keeps no state and writes no file. */
import type { Connection } from 'vscode-languageserver';
import { newBuild, usualWish, type Wish } from '../language/new-build';
import { addToParts, draftPart } from '../language/new-part';
import { partKinds } from '../library/seller-text/propose';
import type { Session } from './session';
import { canonicalUri } from './uri';

export function answerBeginnings(connection: Connection, session: Session): void {
  connection.onRequest('dryfit/partKinds', () => partKinds);
  connection.onRequest(
    'dryfit/draftPart',
    ({ kind, text, typical }: { kind: string; text: string; typical?: boolean }) =>
      draftPart(session.workspace, kind, text, session.today(), typical === true),
  );
  connection.onRequest('dryfit/addPart', ({ near, draft }: { near: string; draft: string }) => {
    const added = addToParts(session.workspace, canonicalUri(near), draft);
    return added ? { uri: session.files.spelled(added.uri), edit: added.edit } : null;
  });
  connection.onRequest('dryfit/wishes', () => usualWish);
  connection.onRequest(
    'dryfit/newBuild',
    ({ uri, ...wish }: Wish & { uri: string }) =>
      newBuild(session.workspace, wish, canonicalUri(uri), session.today()) ?? null,
  );
}
