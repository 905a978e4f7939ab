/** How much of a file is read before the builder is told that it is too much; nothing else decides about size. */
export const limits = {
  /** Characters of one file. A build of a craft is a few thousand; a parts file of a large club some hundred thousand. */
  characters: 2_000_000,
  /** Maps and lists inside one another. */
  depth: 64,
  /** Nodes after aliases are followed, so that a few lines of aliases cannot grow without bound. */
  nodes: 100_000,
  /** Findings shown for one file; what goes beyond is counted in one line. */
  findings: 500,
} as const;

/** A file of so many bytes is not even read. */
export const isBeyondReading = (bytes: number): boolean => bytes > limits.characters * 4;

/** Stands for a file that is not read: just long enough for the finding that says so. */
export const unread = ' '.repeat(limits.characters + 1);
