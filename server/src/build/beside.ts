/**
 * Remembers something beside an object, unseen by whoever copies it or lists its keys.
 * In place of a weak map where objects come and go with every letter: what an old weak map holds for a new object
 * counts as alive until the next full collection, and so would every craft that was ever looked at since.
 */
export interface Beside<O extends object, T> {
  get(of: O): T | undefined;
  set(of: O, value: T): void;
}

export function beside<O extends object, T>(what: string): Beside<O, T> {
  const key = Symbol(what);
  return {
    get: (of) => (of as { readonly [key]?: T })[key],
    set: (of, value) => {
      Object.defineProperty(of, key, { value, writable: true });
    },
  };
}
