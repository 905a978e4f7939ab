/** Where each class of craft has its motor speed: Kv x cells x 3.7 V, least and most that the class flies. Common practice. */
const bands: Readonly<Record<string, readonly [number, number]>> = {
  'whoop-65': [78_000, 115_000],
  'whoop-75': [40_000, 90_000],
  'ducted-2.5': [56_000, 84_000],
  'ducted-3': [50_000, 70_000],
  'open-3': [52_000, 75_000],
  'light-3.5': [38_000, 58_000],
  'freestyle-5': [34_000, 42_000],
  'race-5': [39_000, 50_000],
  'long-range-7': [26_000, 38_000],
  'lifter-10': [17_000, 25_500],
};

export const speedBand = (craftClass: string | undefined): readonly [number, number] | undefined =>
  craftClass === undefined ? undefined : bands[craftClass];
