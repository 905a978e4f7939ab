/** The seeds of this folder's tests; another run of other builds is had with DRYFIT_SEED. */

export const firstSeed = Number(process.env.DRYFIT_SEED ?? 20261203) % 1_000_000;

export const seeds = (count: number, skip = 0): readonly number[] =>
  Array.from({ length: count }, (_, i) => firstSeed + skip + i);
