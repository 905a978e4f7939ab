/** An object whose values are worked out when they are first looked at. It must not be asked for what changes with time. */

type Makers = Readonly<Record<string, () => unknown>>;

class Lazy {
  readonly #makers: Makers;
  readonly #known: unknown[] = [];

  constructor(makers: Makers) {
    this.#makers = makers;
  }

  static look(of: Lazy, at: number, name: string): unknown {
    const known = of.#known;
    if (!(at in known)) known[at] = of.#makers[name]!();
    return known[at];
  }
}

/**
 * By the names of the values. With getters of its own each object would be of a form of its own, which the runtime is slow to make
 * and counts as alive, with all that the getters know, until its next full collection.
 */
const forms = new Map<string, typeof Lazy>();

function formOf(names: readonly string[]): typeof Lazy {
  const key = names.join();
  const known = forms.get(key);
  if (known) return known;
  const form = class extends Lazy {};
  for (const [at, name] of names.entries())
    Object.defineProperty(form.prototype, name, {
      enumerable: true,
      get(this: Lazy) {
        return Lazy.look(this, at, name);
      },
    });
  forms.set(key, form);
  return form;
}

export function lazily<T extends object>(makers: { readonly [K in keyof T]-?: () => T[K] }): T {
  return new (formOf(Object.keys(makers)))(makers as Makers) as unknown as T;
}
