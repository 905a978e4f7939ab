/** An object whose values are worked out when they are first looked at. It must not be asked for what changes with time. */
export function lazily<T extends object>(makers: { readonly [K in keyof T]-?: () => T[K] }): T {
  const known: Partial<T> = {};
  const out = {} as T;
  for (const key in makers) {
    Object.defineProperty(out, key, {
      enumerable: true,
      get: () => {
        if (!(key in known)) known[key] = makers[key]();
        return known[key];
      },
    });
  }
  return out;
}
