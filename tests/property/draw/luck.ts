/** Chance with the few words that drawing a build needs. Must stay repeatable: nothing but the seed decides. */
import { type Chance, seeded } from '../../support/seeded';

export interface Luck extends Chance {
  /** True in about this many of a hundred cases. */
  often(percent: number): boolean;
  /** A whole number from the first to the last. */
  between(least: number, most: number): number;
  /** The value in about this many of a hundred cases, else nothing. */
  maybe<T>(percent: number, value: T): T | undefined;
  /** As many of the list as asked for, in its order. */
  few<T>(list: readonly T[], count: number): T[];
}

export function luck(seed: number): Luck {
  const chance = seeded(seed * 2_654_435_761);
  const often = (percent: number): boolean => chance.below(100) < percent;
  return {
    ...chance,
    often,
    between: (least, most) => least + chance.below(most - least + 1),
    maybe: (percent, value) => (often(percent) ? value : undefined),
    few(list, count) {
      const left = list.map((item, i) => ({ item, i }));
      while (left.length > count) left.splice(chance.below(left.length), 1);
      return left.map(({ item }) => item);
    },
  };
}
