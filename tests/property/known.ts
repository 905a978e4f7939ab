/** Checks that speak wrongly on builds which are sound, until they are mended. Must be empty whenever it can be: an entry that no longer applies fails. */
import type { Choices } from './draw/choices';

export interface Known {
  readonly check: string;
  /** Why the build is sound all the same. */
  readonly because: string;
  /** The seed of a build that shows it. */
  readonly seed: number;
  readonly applies: (choices: Choices) => boolean;
}

export const known: readonly Known[] = [];
