/** Mass by part, heaviest first. Lays out what the card says. */
import type { Craft, Pack } from '../../../build/craft';
import type { Facts, Pointable } from '../../../build/fact';
import { basisWords } from '../../card-text';
import type { PartShare } from '../../card-weight';
import { rangeText, scaledFigure, valueText } from '../../figure-text';
import type { Rows } from '../../table';
import type { Spot, Spots } from './spots';

export interface MassBar {
  readonly words: string;
  readonly text: string;
  /** g */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly spot: Spot | undefined;
}

export function massBars(
  craft: Craft,
  pack: Pack | undefined,
  parts: readonly PartShare[],
  spots: Spots,
): readonly MassBar[] {
  return parts.map(({ part, count, mass }) => {
    const { value, low, high } = scaledFigure(mass);
    const words = `${part.replaceAll('-', ' ')}${count > 1 ? ` x ${count}` : ''}`;
    return { words, text: valueText(mass), value, low, high, spot: spotOf(craft, pack, part, spots) };
  });
}

type Weighed = Facts & { readonly weight?: Pointable };

function spotOf(craft: Craft, pack: Pack | undefined, part: string, spots: Spots): Spot | undefined {
  if (pack && part === `pack ${pack.name}`) {
    const path = `packs.${pack.name}`;
    return spots.spot(pack.facts.weight, path) ?? spots.place(pack.facts.where, path);
  }
  const said = (craft.said.parts ?? {}) as Readonly<
    Record<string, (Weighed & { readonly entries?: ReadonlyMap<string, Weighed> }) | undefined>
  >;
  const role = said[part] ? part : ['adapters', 'fasteners', 'extras'].find((table) => said[table]?.entries?.has(part));
  const facts = said[part] ?? (role === undefined ? undefined : said[role]?.entries?.get(part));
  if (!facts || role === undefined) return undefined;
  const path = role === part ? `parts.${part}` : `parts.${role}.${part}`;
  return spots.spot(facts.weight, path) ?? spots.place(facts.where, path);
}

export const massRows = (parts: readonly PartShare[]): Rows => ({
  heads: ['part', 'pieces', 'weighs', 'typically', 'share', 'from'],
  rows: parts.map(({ part, count, mass, share }) => [
    part.replaceAll('-', ' '),
    String(count),
    valueText(mass),
    rangeText(mass),
    `${(share * 100).toFixed(share < 0.01 ? 1 : 0)} %`,
    basisWords[mass.basis],
  ]),
});
