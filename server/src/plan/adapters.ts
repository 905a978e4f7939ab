/** The adapters of a build that may stand between two unlike parts. Decides nothing about their quality. */
import type { Craft } from '../build/craft';
import type { AdapterFacts } from '../build/generated/facts';
import type { BoardMount } from '../text/notation/mount';
import { boardFit, boardIn } from './mounts';

export const adaptersOf = (craft: Craft, type: NonNullable<AdapterFacts['type']>['value']): readonly AdapterFacts[] =>
  [...(craft.roles.adapters?.entries.values() ?? [])].filter((adapter) => adapter.type?.value === type);

/** A plate between a board and one of the patterns it could be screwed to, either way round. */
export const plateFor = (craft: Craft, board: BoardMount, onto: readonly BoardMount[]): AdapterFacts | undefined =>
  adaptersOf(craft, 'plate').find((plate) => {
    const takes = boardIn(plate.takes?.value);
    const gives = boardIn(plate.gives?.value);
    if (!takes || !gives) return false;
    const between = (one: BoardMount, other: BoardMount): boolean =>
      boardFit(board, one) === 'same' && onto.some((pattern) => boardFit(pattern, other) === 'same');
    return between(takes, gives) || between(gives, takes);
  });

/** An adapter whose two ends name these two words, either way round. */
export const joins = (
  adapter: AdapterFacts,
  one: (text: string) => boolean,
  other: (text: string) => boolean,
): boolean => {
  const takes = adapter.takes?.value ?? '';
  const gives = adapter.gives?.value ?? '';
  return (one(takes) && other(gives)) || (one(gives) && other(takes));
};
