/** Answers what begins something: a new part from pasted text, a new build, the parts of one that was just begun. Keeps no state and writes no file. */
import { type Connection, type ExecuteCommandParams, ExecuteCommandRequest } from 'vscode-languageserver';
import { filledBuild, newBuild } from '../language/new-build';
import { addToParts, draftPart } from '../language/new-part';
import { rangeOf } from '../language/protocol';
import { fillBuild, usualWish, type Wish } from '../language/wish';
import { partKinds } from '../library/seller-text/propose';
import type { Answers } from './answers';
import type { Session } from './session';
import { canonicalUri } from './uri';

export const beginnings = (connection: Connection, session: Session): Answers => ({
  'dryfit/partKinds': () => partKinds,

  'dryfit/draftPart': ({ kind, text, typical }: { kind: string; text: string; typical?: boolean }) =>
    draftPart(session.workspace, kind, text, session.today(), typical === true),

  'dryfit/addPart': ({ near, draft }: { near: string; draft: string }) => {
    const added = addToParts(session.workspace, canonicalUri(near), draft);
    return added ? { uri: session.files.spelled(added.uri), edit: added.edit } : null;
  },

  'dryfit/wishes': () => usualWish,

  'dryfit/newBuild': async ({ uri, ...wish }: Wish & { uri: string }) => {
    // Before the folders are read there would be no part of one's own.
    await session.begun;
    return newBuild(session.workspace, wish, canonicalUri(uri), session.today()) ?? null;
  },

  [ExecuteCommandRequest.method]: async ({ command, arguments: given = [] }: ExecuteCommandParams) => {
    if (command !== fillBuild) throw new Error(`There is no command ${command}.`);
    await session.begun;
    const [spelled, craft] = given.map(String);
    const uri = canonicalUri(spelled ?? '');
    const file = session.workspace.get(uri);
    const build = filledBuild(session.workspace, uri, craft ?? '', session.today());
    if (!file || !build) return null;
    const range = rangeOf(file, { start: 0, end: file.text.length });
    await connection.workspace.applyEdit({
      label: 'Choose the parts',
      edit: { changes: { [session.files.spelled(uri)]: [{ range, newText: build.text }] } },
    });
    return null;
  },
});
