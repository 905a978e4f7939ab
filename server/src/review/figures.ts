/** Compares figures of two versions: the difference, and whether it is more than the figures' own ranges. Works out no figure. */

export interface Figure {
  readonly name: string;
  readonly title: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Figures of one pack by their names, of which the builder's own choice comes first. */
export interface PackFigures<F extends Figure> {
  readonly pack: string;
  readonly figures: ReadonlyMap<string, F>;
}

export interface FigureChange<F extends Figure = Figure> {
  /** The figure's stable name; with the pack before it when that isn't the one flown, as `light/weight-ready`. */
  readonly name: string;
  readonly pack: string;
  readonly before: F | null;
  readonly after: F | null;
  /** The difference is more than both ranges together leave open. */
  readonly significant: boolean;
}

export function figureChanges<F extends Figure>(
  before: readonly PackFigures<F>[],
  after: readonly PackFigures<F>[],
  /** Names of packs before by their names after, where they were renamed. */
  renamedPacks: ReadonlyMap<string, string> = new Map(),
): readonly FigureChange<F>[] {
  const [flownBefore, ...othersBefore] = before;
  const [flown, ...others] = after;
  const was = (pack: string): string => renamedPacks.get(pack) ?? pack;
  return [
    ...packChanges(flownBefore?.figures, flown?.figures, flown?.pack ?? flownBefore?.pack ?? '', ''),
    ...others.flatMap((one) => {
      const other = othersBefore.find(({ pack }) => pack === was(one.pack));
      return other ? packChanges(other.figures, one.figures, one.pack, `${one.pack}/`) : [];
    }),
  ];
}

function packChanges<F extends Figure>(
  before: ReadonlyMap<string, F> | undefined,
  after: ReadonlyMap<string, F> | undefined,
  pack: string,
  prefix: string,
): readonly FigureChange<F>[] {
  const names = new Set([...(after?.keys() ?? []), ...(before?.keys() ?? [])]);
  return [...names].flatMap((name) => {
    const [a, b] = [before?.get(name) ?? null, after?.get(name) ?? null];
    if (a && b && same(a.value, b.value) && same(a.low, b.low) && same(a.high, b.high)) return [];
    return [{ name: prefix + name, pack, before: a, after: b, significant: isSignificant(a, b) }];
  });
}

const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/** The halves of both ranges that face each other, added as independent errors are. */
export function isSignificant(before: Figure | null, after: Figure | null): boolean {
  if (!before || !after) return true;
  const difference = after.value - before.value;
  if (same(after.value, before.value)) return false;
  const [a, b] =
    difference > 0
      ? [before.high - before.value, after.value - after.low]
      : [before.value - before.low, after.high - after.value];
  return Math.abs(difference) > Math.hypot(a, b);
}
