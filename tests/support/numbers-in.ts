/** Every number in a value, with its path, also of what is worked out when it is looked at. */
export function numbersIn(value: unknown, path = ''): readonly (readonly [path: string, number: number])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  const found: (readonly [string, number])[] = [];
  // Not its own keys alone: what is worked out later stands on a class.
  for (const key in value)
    found.push(...numbersIn((value as Readonly<Record<string, unknown>>)[key], `${path}.${key}`));
  return found;
}
