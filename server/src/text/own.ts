/** Looks a word up in a table that only knows its own words. */

/** Whoever writes a file may write `constructor`, which every object of the language knows. */
export const own = <T>(table: Readonly<Record<string, T>>, word: string): T | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;
