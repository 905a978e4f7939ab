/** Code actions on the gates of a build: the one under the cursor ticked again, the next open one ticked. Decides nothing at the bench. */
import { type CodeAction, CodeActionKind } from 'vscode-languageserver-types';
import type { Analysis } from '../analysis';
import { type Gate, gateNames } from '../plan/assembly-gates';
import { gateStates } from '../plan/assembly-steps';
import { tickEdit } from '../report/tick-gate';
import { locate, pathOf } from './locate';
import { type Files, rangeOf } from './protocol';

/** @param today YYYY-MM-DD, what is written */
export function tickActions(
  { file, crafts }: Analysis,
  files: Files,
  offset: number,
  today: string,
): readonly CodeAction[] {
  const located = locate(file, offset);
  if (located?.document.kind !== 'build') return [];
  const [first, named] = pathOf(located);
  if (first !== 'gates') return [];
  const { span } = located.document;
  const craft = crafts.find(({ where }) => where.span.start >= span.start && where.span.start <= span.end);
  if (!craft) return [];
  const states = gateStates(craft);
  const open = states.find(({ is }) => is === 'open')?.gate;
  const here = gateNames.find((gate) => gate === named);
  const again = here !== undefined && states.some(({ gate, is }) => gate === here && is !== 'open' && is !== 'passed');
  const tick = (gate: Gate, title: string): CodeAction => {
    const edit = tickEdit(file, craft, gate, today);
    return {
      title,
      kind: CodeActionKind.RefactorRewrite,
      edit: { changes: { [files.spelled(file.uri)]: [{ range: rangeOf(file, edit.span), newText: edit.text }] } },
    };
  };
  return [
    ...(again ? [tick(here, `Gate \`${here}\` was passed again today`)] : []),
    ...(open === undefined ? [] : [tick(open, `Gate \`${open}\` was passed today`)]),
  ];
}
