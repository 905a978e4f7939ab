/** What a new build is wished to be, and its first lines. Chooses no parts. */

export interface Wish {
  /** A term of `craft`, such as `freestyle-5`. */
  readonly craft: string;
  readonly cells: number;
  /** in */
  readonly propeller: number;
}

/** What each class is mostly flown with. Common practice. */
export const usualWish: Readonly<Record<string, Omit<Wish, 'craft'>>> = {
  'whoop-65': { cells: 1, propeller: 1.22 },
  'whoop-75': { cells: 1, propeller: 1.57 },
  'ducted-2.5': { cells: 4, propeller: 2.5 },
  'ducted-3': { cells: 4, propeller: 3 },
  'open-3': { cells: 4, propeller: 3 },
  'light-3.5': { cells: 4, propeller: 3.5 },
  'freestyle-5': { cells: 6, propeller: 5.1 },
  'race-5': { cells: 6, propeller: 5.1 },
  'long-range-7': { cells: 6, propeller: 7 },
  'lifter-10': { cells: 6, propeller: 10 },
};

/** How a build of a class begins; what `dryfit.fillBuild` writes the parts behind. */
export const beginningOf = (craft: string): string => `dryfit: build\nname: My ${craft}\ncraft: ${craft}\n`;

/** Command of the server: chooses the parts of a build that has just been begun. Arguments: its address and its class. */
export const fillBuild = 'dryfit.fillBuild';
