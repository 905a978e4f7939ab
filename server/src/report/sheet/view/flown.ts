/** A craft with one pack and its card: as the file has it, or with a value that is tried. Works nothing out itself. */
import type { Craft, Pack } from '../../../build/craft';
import { type CraftFigures, type CraftInput, figures } from '../../../physics';
import type { Variation } from '../../../plan/vary';
import { figuresFor, inputFor } from '../../../plan/worked';
import { type PackCard, packCard } from '../../card';

export interface Flown {
  readonly craft: Craft;
  readonly pack: Pack | undefined;
  readonly card: PackCard;
  readonly input: CraftInput | undefined;
  readonly figures: CraftFigures | undefined;
  /** What is tried, as in `1950 Kv`. */
  readonly label: string | undefined;
}

/** @param card the one of this pack */
export function asItIs(craft: Craft, pack: Pack | undefined, card: PackCard): Flown {
  const made = pack && inputFor(craft, pack);
  return {
    craft,
    pack,
    card,
    input: made?.ok ? made.input : undefined,
    figures: pack && figuresFor(craft, pack),
    label: undefined,
  };
}

export function asTried({ craft, pack, weight, input, label }: Variation): Flown {
  const own = input && figures(input);
  return { craft, pack, card: packCard(craft, pack, { figures: own, weight }), input, figures: own, label };
}
