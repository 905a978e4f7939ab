/** Gives each of some takers a place of its own, if that can be done: maximum bipartite matching by augmenting paths, with the reason where it can't. */

/** Indices of takers and places that compete when somebody is left out: the places wanted are fewer than those who want them. */
export interface Shortage {
  readonly left: number;
  readonly takers: readonly number[];
  readonly places: readonly number[];
}

export interface Matching {
  /** Place of each taker, or undefined where none is left. */
  readonly placeOf: readonly (number | undefined)[];
  readonly shortages: readonly Shortage[];
}

/**
 * @param wants for each taker the places that would do, the best first; earlier takers keep a good place where that costs nobody one
 */
export function match(wants: readonly (readonly number[])[]): Matching {
  const takerAt = new Map<number, number>();
  const shortages: Shortage[] = [];
  wants.forEach((_, taker) => {
    const seen = new Set<number>();
    if (!augment(wants, taker, takerAt, seen)) {
      // All places within reach are taken by others who can't move either: Hall's condition fails for exactly this set.
      const places = [...seen].sort((a, b) => a - b);
      shortages.push({
        left: taker,
        takers: [...new Set([taker, ...places.map((place) => takerAt.get(place)!)])].sort((a, b) => a - b),
        places,
      });
    }
  });
  const placeOf: (number | undefined)[] = wants.map(() => undefined);
  for (const [place, taker] of takerAt) placeOf[taker] = place;
  return { placeOf, shortages };
}

/** A free place first, so that nobody moves without need; then one whose holder can move. */
function augment(
  wants: readonly (readonly number[])[],
  taker: number,
  takerAt: Map<number, number>,
  seen: Set<number>,
): boolean {
  const free = wants[taker]!.find((place) => !takerAt.has(place));
  if (free !== undefined) {
    takerAt.set(free, taker);
    return true;
  }
  for (const place of wants[taker]!) {
    if (seen.has(place)) continue;
    seen.add(place);
    if (augment(wants, takerAt.get(place)!, takerAt, seen)) {
      takerAt.set(place, taker);
      return true;
    }
  }
  return false;
}
