/** Screws as they are sold, and which of them holds a motor on an arm. A builder's rule, written down apart from the checks'. */

/** mm, by thread */
const sold: Readonly<Record<number, readonly number[]>> = {
  1.4: [3, 4, 5],
  2: [3, 4, 5, 6, 7, 8],
  3: [5, 6, 7, 8, 9, 10, 12],
};

/** mm of thread a builder wants in the motor */
const hold: Readonly<Record<number, number>> = { 1.4: 1.2, 2: 1.5, 3: 2.5 };

/** Lengths that hold and stay clear of the winding by a little. */
export const motorScrewLengths = (
  thread: number,
  arm: number,
  depth: number,
  washer = 0,
  soft = 0,
): readonly number[] =>
  (sold[thread] ?? []).filter((length) => {
    const inside = length - arm - washer;
    // A soft pad is anything from flat to as thick as it was.
    return inside - soft >= (hold[thread] ?? thread) && inside <= depth;
  });

/** Hex key by thread and head. ISO 4762, ISO 7380-1, ISO 10642; M2 button heads by trade habit. */
export const hexKey: Readonly<Record<string, string>> = {
  'M1.4 pan': '0.9 mm',
  'M2 cap': '1.5 mm',
  'M2 button': '1.3 mm',
  'M3 cap': '2.5 mm',
  'M3 button': '2.0 mm',
  'M3 countersunk': '2.0 mm',
};
