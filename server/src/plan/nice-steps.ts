/** Round steps for trying values: the next size up and down, and an even row between two ends. Knows numbers, not units or parts. */

/** The largest of 1, 2, 5, 10, 20 … that is not above. */
export function niceStep(size: number): number {
  const decade = 10 ** Math.floor(Math.log10(size));
  const lead = size / decade;
  return (lead >= 5 - 1e-9 ? 5 : lead >= 2 - 1e-9 ? 2 : 1) * decade;
}

/** From one end to the other, both in it, in the direction given. Undefined when that would be too many. */
export function evenRow(from: number, to: number, step: number, most = 200): readonly number[] | undefined {
  const count = Math.abs(to - from) / step;
  if (!(step > 0) || !(count <= most)) return undefined;
  const sign = to >= from ? 1 : -1;
  const row = Array.from({ length: Math.floor(count + 1e-9) + 1 }, (_, i) => from + sign * i * step);
  if (Math.abs(to - row.at(-1)!) > 1e-9 * Math.max(Math.abs(to), step)) row.push(to);
  return row;
}

/** mAh that packs are commonly sold with. Common practice. */
const packSizes = [
  260, 300, 380, 450, 550, 650, 750, 850, 1000, 1100, 1300, 1500, 1800, 2200, 2600, 3000, 3300, 4000, 5000, 6000, 8000,
  10_000, 12_000,
];

/** Next smaller and larger capacity in Ah; a tenth where the trade has none. */
export function neighbourCapacities(ampereHours: number): readonly [smaller: number, larger: number] {
  const own = ampereHours * 1000;
  const smaller = packSizes.filter((size) => size < own * 0.97).at(-1);
  const larger = packSizes.find((size) => size > own * 1.03);
  const near = (size: number | undefined): size is number => size !== undefined && size > own / 1.5 && size < own * 1.5;
  return [near(smaller) ? smaller / 1000 : ampereHours * 0.9, near(larger) ? larger / 1000 : ampereHours * 1.1];
}

/** A twentieth of it, rounded down to a round step. */
export const neighbourValues = (value: number): readonly [smaller: number, larger: number] => {
  const step = niceStep(Math.abs(value) * 0.06);
  return [value - step, value + step];
};
