/** The words for a board whose holes are not where the frame's are; used by the checks of each board. Chooses no board. */
import type { Craft } from '../build/craft';
import type { Fact, Many } from '../build/fact';
import { plateFor } from '../plan/adapters';
import { bestBoardFit, boardName } from '../plan/mounts';
import type { BoardMount } from '../text/notation/mount';
import type { Verdict } from './check';

export function boardOnFrame(
  craft: Craft,
  name: string,
  board: Fact<BoardMount>,
  frame: Many<Fact<BoardMount>>,
  grommets: boolean | undefined,
): Verdict | undefined {
  const rear = craft.roles.frame?.['rear-mounts'];
  const patterns = [...frame.items, ...(rear?.items ?? [])].map((item) => item.value);
  const fit = bestBoardFit(board.value, patterns);
  if (fit === 'same' || plateFor(craft, board.value, patterns)) return undefined;
  const offered = [...new Set(patterns.map(boardName))].join(' and ');
  const side = [{ fact: frame, says: `the frame offers ${offered}` }];
  if (fit === 'near')
    return {
      at: board,
      with: side,
      severity: 'warning',
      message: `The ${name} has ${boardName(board.value)} holes, the frame ${offered}: each hole is a third of a millimetre off. ${grommets === false ? 'Without soft grommets the screws bind and bend the board.' : 'Soft grommets take that up, hard screws do not.'} Use grommets, or a board with the frame's pattern.`,
    };
  return {
    at: board,
    with: side,
    message: `The ${name} has ${boardName(board.value)} holes, the frame offers ${offered}. It cannot be screwed down. Use a board with one of the frame's patterns, or add an adapter plate from ${boardName(board.value)}.`,
  };
}
