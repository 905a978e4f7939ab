/** What the validators made from schemas/ call to judge a quantity or a notation. Says yes or no; the words are found elsewhere. */
import { type Notation, readers } from '../text/notation';
import { readQuantity } from '../text/quantity';
import type { Dimension } from '../text/units';

/** A list or a map where a value is wanted is another mistake, told by `type`. */
export const isQuantity = (text: unknown, dimension: Dimension): boolean =>
  typeof text !== 'string' || readQuantity(text, dimension).ok;

export const isNotation = (text: unknown, notation: Notation): boolean =>
  typeof text !== 'string' || readers[notation](text).ok;
