/** The propellers that each class of craft flies, least and most diameter in m. Common practice. */
const inch = 0.0254;

const sizes: Readonly<Record<string, readonly [number, number]>> = {
  'whoop-65': [0.029, 0.036],
  'whoop-75': [0.036, 0.051],
  'ducted-2.5': [0.048, 2.75 * inch],
  'ducted-3': [2.75 * inch, 3.25 * inch],
  'open-3': [2.4 * inch, 3.25 * inch],
  'light-3.5': [3.25 * inch, 4.25 * inch],
  'freestyle-5': [4.5 * inch, 5.5 * inch],
  'race-5': [4.5 * inch, 5.5 * inch],
  'long-range-7': [5.5 * inch, 8 * inch],
  'lifter-10': [8 * inch, 12 * inch],
};

export const classDiameter = (craftClass: string): readonly [number, number] | undefined => sizes[craftClass];
