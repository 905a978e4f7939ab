/**
 * How long a pack lasts: walks the charge down in slices until the reserve or the landing voltage. It must not know
 * motors: the current at a state of charge is given to it.
 */

export interface Drain {
  /** A out of the pack. */
  readonly current: number;
  /** V of the loaded pack less its landing voltage; negative ends the flight. */
  readonly margin: number;
}

export interface Endurance {
  /** s */
  readonly duration: number;
  /** Ah taken out. */
  readonly used: number;
  /** Wh taken out, at the loaded voltage. */
  readonly energy: number;
  /** Charge left, 0 … 1. */
  readonly chargeLeft: number;
  /** V over the landing voltage at the end. */
  readonly marginLeft: number;
  readonly endedBy: 'reserve' | 'landing-voltage';
}

const SLICES = 8;
const BISECTIONS = 14;

/**
 * Flight from a full pack.
 * @param drainAt state at a charge 0 … 1; undefined where the craft can't be held up
 * @param capacity Ah
 * @param reserve share of the charge kept
 * @param landing V of the pack
 * @returns undefined when even the full pack is under its landing voltage or cannot hold the craft
 */
export function endurance(
  drainAt: (charge: number) => Drain | undefined,
  capacity: number,
  reserve: number,
  landing: number,
): Endurance | undefined {
  const flies = (d: Drain | undefined): d is Drain => d !== undefined && d.margin >= 0;
  const first = drainAt(1);
  if (!flies(first)) return undefined;
  const step = (1 - reserve) / SLICES;
  let charge = 1;
  let here: Drain = first;
  let duration = 0;
  let energy = 0;
  const advance = (to: number, there: Drain): void => {
    const used = (charge - to) * capacity;
    duration += used * 3600 * 0.5 * (1 / here.current + 1 / there.current);
    energy += used * (landing + 0.5 * (here.margin + there.margin));
    charge = to;
    here = there;
  };
  const landed = (endedBy: Endurance['endedBy']): Endurance => ({
    duration,
    used: (1 - charge) * capacity,
    energy,
    chargeLeft: charge,
    marginLeft: here.margin,
    endedBy,
  });
  for (let i = 1; i <= SLICES; i++) {
    const to = 1 - i * step;
    const there = drainAt(to);
    if (flies(there)) {
      advance(to, there);
      continue;
    }
    // The flight ends inside this slice: bisect for the last charge that still flies.
    let good = charge;
    let bad = to;
    let last: Drain = here;
    for (let k = 0; k < BISECTIONS; k++) {
      const middle = (good + bad) / 2;
      const d = drainAt(middle);
      if (flies(d)) {
        good = middle;
        last = d;
      } else bad = middle;
    }
    advance(good, last);
    return landed('landing-voltage');
  }
  return landed('reserve');
}
