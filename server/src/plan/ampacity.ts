/** What a wire carries without end, by gauge. Chassis column of the Handbook of Electronic Tables and Formulas, as reprinted. */
const table: Readonly<Record<number, number>> = {
  4: 135,
  6: 101,
  8: 73,
  10: 55,
  12: 41,
  14: 32,
  16: 22,
  18: 16,
  20: 11,
  22: 7,
  24: 3.5,
  26: 2.2,
  28: 1.4,
  30: 0.86,
  32: 0.53,
};

/** A; gauges between two rows take the mean of both. */
export function chassisAmpacity(gauge: number): number {
  if (gauge <= 4) return table[4]!;
  if (gauge >= 32) return table[32]!;
  return table[gauge] ?? (table[gauge - 1]! + table[gauge + 1]!) / 2;
}
