/** An object whose values are worked out when they are first looked at. It must not be asked for what changes with time. */
export function lazily<T extends object>(makers: { readonly [K in keyof T]-?: () => T[K] }): T {
  const out = {} as T;
  for (const key of Object.keys(makers) as (keyof T)[]) {
    Object.defineProperty(out, key, {
      enumerable: true,
      configurable: true,
      get() {
        const value = makers[key]();
        Object.defineProperty(out, key, { value, enumerable: true });
        return value;
      },
    });
  }
  return out;
}
