/** Where the craft's centre of mass lies along the frame, and where its pack would have to sit to bring it to the middle. Places nothing by guess. */
import type { Craft, Pack, Role } from '../build/craft';
import type { Fact, Facts } from '../build/fact';
import { centreOfMass } from '../physics';
import type { Position } from '../text/notation/position';
import { roleKinds } from '../vocabulary/generated/fields';
import { type WeightRow, weightOf } from './weight';

export interface Balance {
  /** m forward of the middle of the motors; without the pack when nobody says where it sits. */
  readonly centre: number;
  readonly low: number;
  readonly high: number;
  readonly withPack: boolean;
  /** m forward at which the pack would bring the centre to the middle; when its own place is not said. */
  readonly packAt: number | undefined;
  /** Share of the mass whose place nobody says. */
  readonly unplaced: number;
}

/** Parts that lie around the middle of the motors by their nature. Common practice. */
const central: ReadonlySet<string> = new Set([
  'frame',
  'motors',
  'propellers',
  'stack',
  'all-in-one',
  'flight-controller',
  'esc',
  'harness',
]);
/** m either way that a part without a place may be off the middle, as a share of the motors' spacing along the frame. */
const UNPLACED_SPREAD = 0.25;

export function balanceOf(craft: Craft, pack: Pack | undefined): Balance | undefined {
  const { rows, packRow } = weightOf(craft, pack);
  const placed = rows.map((row) => ({ row, at: placeOfPart(craft, row.part) }));
  const packPlace = pack?.facts.at?.value.forward;
  // With nothing placed the answer would only be our own guess.
  if (packPlace === undefined && !placed.some(({ row, at }) => at !== undefined && row.mass.value > 0))
    return undefined;
  const middle = middleOfMotors(craft);
  const masses = placed.map(({ row, at }) => ({
    ...row.mass,
    x: (at ?? middle) - middle,
    known: at !== undefined || central.has(row.part),
  }));
  if (packRow && packPlace !== undefined) masses.push({ ...packRow.mass, x: packPlace - middle, known: true });
  const centre = centreOfMass(masses);
  if (centre === undefined) return undefined;
  const total = masses.reduce((sum, one) => sum + one.value, 0);
  const reach = UNPLACED_SPREAD * (craft.roles.frame?.wheelbase?.value ?? 0.2);
  const spread = Math.hypot(
    ...masses.map((one) => (one.known ? ((one.high - one.low) / 2) * (one.x - centre) : one.value * reach) / total),
  );
  const unplaced = masses.reduce((sum, one) => sum + (one.known ? 0 : one.value), 0) / total;
  return {
    centre,
    low: centre - spread,
    high: centre + spread,
    withPack: packRow !== undefined && packPlace !== undefined,
    packAt: packRow && packPlace === undefined ? middle - (centre * total) / packRow.mass.value : undefined,
    unplaced,
  };
}

function placeOfPart(craft: Craft, part: WeightRow['part']): number | undefined {
  const parts = craft.said.parts as
    | Readonly<Record<string, Placeable | { readonly entries: ReadonlyMap<string, Placeable> }>>
    | undefined;
  const own = parts?.[part];
  if (own && 'at' in own && (own.at as { is?: string } | undefined)?.is === 'fact')
    return (own.at as Fact<Position>).value.forward;
  for (const role of Object.keys(roleKinds) as Role[]) {
    const table = parts?.[role];
    if (!table || !('entries' in table)) continue;
    const at = table.entries.get(part)?.at;
    if (at) return at.value.forward;
  }
  return undefined;
}

type Placeable = Facts & { readonly at?: Fact<Position> };

const middleOfMotors = (craft: Craft): number => {
  const places = craft.roles.frame?.['motor-positions']?.items.map(({ value }) => value.forward) ?? [];
  return places.length > 0 ? places.reduce((sum, one) => sum + one, 0) / places.length : 0;
};
