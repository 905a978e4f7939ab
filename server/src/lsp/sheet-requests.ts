/** Answers what the build sheet of an editor asks: its look, its sections, the edit of a value that was tried. Keeps the last drawing of each analysis. */
import type { CancellationToken, Connection } from 'vscode-languageserver';
import type { Analysis } from '../analysis';
import { type SheetAnswer, type SheetAsked, sheetAnswer, sheetEdit, sheetView } from '../language/sheet';
import type { Session } from './session';
import { canonicalUri } from './uri';

type Asked = SheetAsked & { readonly uri: string };

export function answerSheet(connection: Connection, session: Session): void {
  const drawn = new WeakMap<Analysis, Map<string, SheetAnswer>>();

  connection.onRequest('dryfit/sheetLook', async () => {
    const { pageRules, pictureRules } = await session.drawing();
    return `${pictureRules}\n${pageRules}`;
  });

  connection.onRequest('dryfit/sheet', async (asked: Asked, token: CancellationToken): Promise<SheetAnswer | null> => {
    const draw = await session.drawing();
    await session.begun;
    // Whatever else has arrived meanwhile comes first: a newer edit, or that this is not wanted any more.
    await pause();
    const analysis = token.isCancellationRequested ? undefined : session.analysisOf(canonicalUri(asked.uri));
    if (!analysis) return null;
    const key = JSON.stringify([asked.pack, asked.tries, asked.line]);
    const known = drawn.get(analysis)?.get(key);
    if (known) return known;
    const made = sheetView(analysis, asked, session.today());
    await pause();
    if (!made || token.isCancellationRequested) return null;
    const answer = sheetAnswer(made, analysis, session.files, draw);
    // One of each build is enough: sliders would fill it.
    drawn.set(analysis, new Map([[key, answer]]));
    return answer;
  });

  connection.onRequest(
    'dryfit/sheetWrite',
    ({ uri, field, value, ...asked }: Asked & { readonly field: string; readonly value: number }) => {
      const analysis = session.analysisOf(canonicalUri(uri));
      return (analysis && sheetEdit(analysis, session.files, asked, field, value)) ?? null;
    },
  );
}

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
