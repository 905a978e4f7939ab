/** Answers what the build sheet of an editor asks: its look, its sections, the edit of a value that was tried. Keeps the last drawing of each analysis. */
import type { CancellationToken } from 'vscode-languageserver';
import type { Analysis } from '../analysis';
import {
  type Answered,
  type SheetAnswer,
  type SheetAsked,
  sheetEdit,
  sheetSince,
  sheetView,
  type WholeSheet,
  wholeSheet,
} from '../language/sheet';
import type { Drawn } from '../report/sheet/draw/index';
import type { Answers } from './answers';
import type { Session } from './session';
import { canonicalUri } from './uri';

type Asked = SheetAsked & { readonly uri: string };

export function sheets(session: Session): Answers {
  const drawn = new WeakMap<Analysis, { readonly key: string; readonly sheet: WholeSheet }>();
  let last: Answered | undefined;
  const answerWith = (sheet: WholeSheet, since: number | undefined): SheetAnswer => {
    const made = sheetSince(sheet, (last?.serial ?? 0) + 1, since === last?.serial ? last : undefined);
    last = made.answered;
    return made.answer;
  };
  /** One panel looks at one build. */
  const sections: Drawn = new Map();

  return {
    'dryfit/sheetLook': async () => {
      const { pageRules, pictureRules } = await session.drawing();
      return `${pictureRules}\n${pageRules}`;
    },

    'dryfit/sheet': async (asked: Asked, token: CancellationToken): Promise<SheetAnswer | null> => {
      const draw = await session.drawing();
      await session.begun;
      // Whatever else has arrived meanwhile comes first: a newer edit, or that this is not wanted any more.
      await pause();
      const analysis = token.isCancellationRequested ? undefined : session.analysisOf(canonicalUri(asked.uri));
      if (!analysis) return null;
      const key = JSON.stringify([asked.pack, asked.tries, asked.line]);
      const known = drawn.get(analysis);
      if (known?.key === key) return answerWith(known.sheet, asked.since);
      const made = sheetView(analysis, asked, session.today());
      await pause();
      if (!made || token.isCancellationRequested) return null;
      const sheet = wholeSheet(made, analysis, session.files, draw, sections);
      // One of each build is enough: sliders would fill it.
      drawn.set(analysis, { key, sheet });
      return answerWith(sheet, asked.since);
    },

    'dryfit/sheetWrite': ({
      uri,
      field,
      value,
      ...asked
    }: Asked & { readonly field: string; readonly value: number }) => {
      const analysis = session.analysisOf(canonicalUri(uri));
      return (analysis && sheetEdit(analysis, session.files, asked, field, value)) ?? null;
    },
  };
}

/** A turn of the event loop; a timer, where there is nothing sooner, waits a millisecond at least. */
const pause = (): Promise<void> =>
  new Promise((resolve) => {
    if (typeof setImmediate === 'function') setImmediate(resolve);
    else setTimeout(resolve, 0);
  });
