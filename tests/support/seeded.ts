/** Repeatable chance: the same seed gives the same run everywhere. */
export interface Chance {
  /** 0 up to but not including n */
  below(n: number): number;
  pick<T>(list: readonly T[]): T;
}

/** Mulberry32, a public-domain generator by T. Ettinger. */
export function seeded(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const below = (n: number): number => Math.floor(next() * n);
  return { below, pick: (list) => list[below(list.length)]! };
}
