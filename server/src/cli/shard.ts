/** Shares the files out over the machines of a matrix: each file to exactly one, evenly by count and by size, the same on every machine. */
import { CannotRun } from './console';

export interface Shard {
  /** From 1. */
  readonly index: number;
  readonly of: number;
}

export function readShard(text: string): Shard {
  const match = /^(\d{1,4})\/(\d{1,4})$/.exec(text);
  const [index, of] = [Number(match?.[1]), Number(match?.[2])];
  if (!match || index < 1 || index > of)
    throw new CannotRun(`--shard takes a share and how many there are, as 2/8; not \`${text}\`.`);
  return { index, of };
}

/** @param sizeOf bytes, or anything that grows with the work */
export function shardOf(
  files: readonly string[],
  { index, of }: Shard,
  sizeOf: (file: string) => number,
): readonly string[] {
  const sized = files.map((file) => ({ file, size: sizeOf(file) }));
  sized.sort((a, b) => b.size - a.size || (a.file < b.file ? -1 : 1));
  // There and back again, so that the first share doesn't get the largest of every round.
  const mine = sized.filter((_, i) => {
    const round = Math.floor(i / of);
    const place = i % of;
    return (round % 2 === 0 ? place : of - 1 - place) === index - 1;
  });
  return mine.map(({ file }) => file).sort();
}
