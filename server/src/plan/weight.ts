/** What the craft weighs: each part with its count, what was said or is usual, and the range of the sum. Judges nothing. */
import type { Craft, Pack, Role } from '../build/craft';
import type { Fact, Facts } from '../build/fact';
import { type Range, totalMass } from '../physics';
import type { Trust } from '../text/origin';
import { roleKinds } from '../vocabulary/generated/fields';
import {
  usualFrameMass,
  usualLeadMass,
  usualMass,
  usualMotorMass,
  usualPackMass,
  usualPropellerMass,
} from './class-masses';
import { once } from './once';

export interface WeightRow {
  /** The role in the build, or the name of an entry of a table of parts. */
  readonly part: string;
  readonly count: number;
  /** kg, all of them together */
  readonly mass: Range;
  readonly basis: 'weighed' | 'said' | 'estimate';
  readonly fact: Fact<number> | undefined;
}

export interface Weight {
  readonly rows: readonly WeightRow[];
  /** kg without a pack */
  readonly dry: Range;
  /** kg ready to fly with this pack; measured when the builder weighed the craft */
  readonly ready: Range;
  readonly packRow: WeightRow | undefined;
  readonly weighed: boolean;
}

/** How far a weight may be off, as a share, by where it came from. Common practice: listings leave out wires and screws. */
const spreadOf: Readonly<Record<Trust, number>> = {
  measured: 0.01,
  maker: 0.03,
  seller: 0.05,
  unsaid: 0.04,
  estimate: 0.15,
};

type Weighable = Facts & { readonly weight?: Fact<number>; readonly count?: Fact<number> };

export const motorCount = (craft: Craft): number =>
  craft.roles.motors?.count?.value ??
  craft.roles.frame?.motors?.value ??
  (craft.roles.frame?.geometry?.value === 'hexa' ? 6 : craft.roles.frame?.geometry?.value === 'octo' ? 8 : 4);

export function weightOf(craft: Craft, pack: Pack | undefined): Weight {
  const rows = once(craft, 'weight rows', () => rowsWithout(craft));
  const packRow = pack && packRowOf(pack);
  const dry = totalMass(rows.map((one) => one.mass));
  const ready = packRow ? totalMass([...rows, packRow].map((one) => one.mass)) : dry;
  const scale = craft.said.flight?.weighed;
  if (!scale) return { rows, dry, ready, packRow, weighed: false };
  // The scale had the pack on that the figures are for; another one changes the reading by what it weighs more or less.
  const onScale = chosenPack(craft);
  const ownPack = onScale && packRowOf(onScale);
  const swapped = totalMass([packRow, ownPack].flatMap((one) => (one && onScale !== pack ? [one.mass] : [])));
  const value = scale.value + (packRow?.mass.value ?? 0) - (ownPack?.mass.value ?? 0);
  const spread = Math.hypot(scale.value * 0.01, swapped.high - swapped.value);
  const bare = scale.value - (ownPack?.mass.value ?? 0);
  return {
    rows,
    dry: range(Math.max(0, bare), Math.hypot(scale.value * 0.01, ownPack ? ownPack.mass.high - ownPack.mass.value : 0)),
    ready: range(Math.max(0, value), spread),
    packRow,
    weighed: true,
  };
}

/** What flies whichever pack is on. */
function rowsWithout(craft: Craft): readonly WeightRow[] {
  const rows = Object.keys(roleKinds).flatMap((role) => rowsOf(craft, role as Role));
  return [...rows, smallThings(rows)];
}

/** The pack that the builder names for the figures, else the first. */
export const chosenPack = (craft: Craft): Pack | undefined =>
  craft.packs.find((pack) => pack.name === craft.said.flight?.pack?.value) ?? craft.packs[0];

const packRowOf = (pack: Pack): WeightRow =>
  row(
    'battery',
    pack.name,
    pack.facts,
    1,
    usualPackMass(pack.facts.cells?.value.series, pack.facts.capacity?.value, pack.facts.chemistry?.value === 'Li-ion'),
  );

function rowsOf(craft: Craft, role: Role): WeightRow[] {
  const parts = craft.said.parts as Record<string, unknown> | undefined;
  // Roles filled by a stack or an all-in-one board weigh as that one part.
  const own = parts?.[role];
  if (!own) return [];
  if (role === 'adapters' || role === 'fasteners' || role === 'extras') {
    const table = own as { entries: ReadonlyMap<string, Weighable> };
    return [...table.entries].map(([name, facts]) => row(roleKinds[role], name, facts, 1, usualMass(roleKinds[role])));
  }
  return [row(roleKinds[role], role, own as Weighable, usualCount(craft, role), usualOf(craft, role))];
}

function usualCount(craft: Craft, role: Role): number {
  if (role === 'motors' || role === 'propellers') return motorCount(craft);
  if (role === 'esc' && craft.roles.esc?.type?.value === 'single') return motorCount(craft);
  return 1;
}

function usualOf(craft: Craft, role: Role): { value: number; spread: number } {
  const { motors, propellers } = craft.roles;
  if (role === 'motors') return usualMotorMass(motors?.stator?.value);
  if (role === 'propellers') return usualPropellerMass(propellers?.size?.value.diameter);
  if (role === 'frame') return usualFrameMass(propellers?.size?.value.diameter);
  if (role === 'battery-lead') return usualLeadMass(craft.roles['battery-lead']?.plug?.value);
  return usualMass(roleKinds[role]);
}

function row(
  kind: string,
  part: string,
  facts: Weighable,
  count: number,
  usual: { value: number; spread: number },
): WeightRow {
  const pieces = kind === 'battery' ? 1 : (facts.count?.value ?? count);
  const weight = facts.weight ?? sumOfBoards(kind, facts);
  if (!weight)
    return {
      part,
      count: pieces,
      mass: range(usual.value * pieces, usual.spread * pieces),
      basis: 'estimate',
      fact: undefined,
    };
  const spread = weight.value * spreadOf[weight.origin.trust];
  const basis =
    weight.origin.trust === 'measured' ? 'weighed' : weight.origin.trust === 'estimate' ? 'estimate' : 'said';
  return { part, count: pieces, mass: range(weight.value * pieces, spread * pieces), basis, fact: facts.weight };
}

/** A stack whose boards are weighed one by one. */
function sumOfBoards(kind: string, facts: Weighable): Pick<Fact<number>, 'value' | 'origin'> | undefined {
  if (kind !== 'stack') return undefined;
  const boards = facts as Weighable & { readonly esc?: Weighable; readonly 'flight-controller'?: Weighable };
  const esc = boards.esc?.weight;
  const controller = boards['flight-controller']?.weight;
  return esc && controller ? { value: esc.value + controller.value, origin: esc.origin } : undefined;
}

/** Wire ends, solder, heat-shrink, screws and tape that no list names: about 2 % of the parts. Common practice. */
function smallThings(rows: readonly WeightRow[]): WeightRow {
  const sum = rows.reduce((total, one) => total + one.mass.value, 0);
  return {
    part: 'solder, wire ends, tape',
    count: 1,
    mass: range(sum * 0.02, sum * 0.015),
    basis: 'estimate',
    fact: undefined,
  };
}

const range = (value: number, spread: number): Range => ({
  value,
  low: Math.max(0, value - spread),
  high: value + spread,
});
