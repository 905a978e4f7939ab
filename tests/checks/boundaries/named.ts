/** Checks that a number decides and that have no limit all the same: the number names a thing and measures nothing. */

/** By check: what the number names. */
export const named: Readonly<Record<string, string>> = {
  'board-with-motor-pattern': 'patterns known from motors, each by its name',
  'board-pattern-spoken': 'a pattern as it is spoken',
  'bus-address-doubled': 'an address on the bus',
};
