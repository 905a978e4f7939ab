/** The places in files that things on the sheet stand for, by a short key that a picture can carry. Finds no places itself. */
import type { Pointable } from '../../../build/fact';
import type { Place } from '../../../build/place';

/** Key of a place; drawn things carry it. */
export type Spot = string;

export interface SpotPlace {
  /** Where a click leads: the value as it is written, maybe in a parts file. */
  readonly go: Place;
  /** The part of the build it belongs to, as in `parts.motors`. */
  readonly part: string | undefined;
}

export interface Spots {
  /** @param part where it belongs in the build, for a caret that stands anywhere in it */
  spot(thing: Pointable | undefined, part?: string): Spot | undefined;
  place(place: Place | undefined, part?: string): Spot | undefined;
  readonly places: ReadonlyMap<Spot, SpotPlace>;
}

export function collectSpots(build: string): Spots {
  const places = new Map<Spot, SpotPlace>();
  const place = (go: Place | undefined, part?: string): Spot | undefined => {
    if (!go) return undefined;
    const key = `${go.file === build ? '' : `${go.file.split('/').at(-1)}:`}${go.path}${part ? ` in ${part}` : ''}`;
    const known = places.get(key);
    // Two files of one name in different folders, or two documents of one file.
    const free =
      known && (known.go.file !== go.file || known.go.span.start !== go.span.start) ? `${key} ${places.size}` : key;
    places.set(free, { go, part });
    return free;
  };
  return { places, place, spot: (thing, part) => place(thing?.at, part) };
}
