/** How each pack is charged with the bench's charger: current, time, storage, plug, and which packs may go side by side. Allows nothing that a label forbids. */
import type { Craft, Pack } from '../build/craft';
import { cellVoltage } from './cell-voltage';

export interface Charging {
  readonly pack: string;
  readonly count: number;
  /** V of the pack */
  readonly full: number;
  readonly storage: number;
  /** A; nothing when the capacity isn't known */
  readonly current: number | undefined;
  readonly limitedBy: '1 C' | 'label' | 'charger current' | 'charger power' | undefined;
  readonly minutes: number | undefined;
  readonly plug: 'fits' | 'adapter' | undefined;
  readonly plugName: string | undefined;
  /** Packs at once, side by side; 1 without a board for it. */
  readonly together: number;
  /** Why it can't be charged here. */
  readonly cannot: string | undefined;
}

/** V of one cell put away for more than a day or two. Common practice. */
const stored = { LiPo: 3.85, LiHV: 3.85, 'Li-ion': 3.7 } as const;

export function chargingPlan(craft: Craft): readonly Charging[] {
  return craft.packs.map((pack) => planFor(craft, pack));
}

function planFor(craft: Craft, { name, facts }: Pack): Charging {
  const charger = craft.bench?.charger;
  const series = facts.cells?.value.series ?? 1;
  const chemistry = facts.chemistry?.value ?? 'LiPo';
  const full = series * cellVoltage(chemistry).full;
  const capacity = facts.capacity?.value;
  const count = facts.count?.value ?? 1;
  const rate = facts['charge-limit']?.value;
  const wanted = capacity === undefined ? undefined : capacity * Math.min(1, rate ?? 1);
  const reasons: [number, NonNullable<Charging['limitedBy']>][] = [];
  if (wanted !== undefined) reasons.push([wanted, rate !== undefined && rate < 1 ? 'label' : '1 C']);
  if (charger?.current) reasons.push([charger.current.value, 'charger current']);
  if (charger?.power) reasons.push([charger.power.value / full, 'charger power']);
  const least = wanted === undefined ? undefined : reasons.reduce((best, one) => (one[0] < best[0] ? one : best));
  const together =
    charger?.['parallel-board']?.value === true && least && wanted
      ? Math.max(
          1,
          Math.min(
            count,
            6,
            Math.floor(
              Math.min(
                charger.current?.value ?? Number.POSITIVE_INFINITY,
                charger.power ? charger.power.value / full : Number.POSITIVE_INFINITY,
              ) / wanted,
            ),
          ),
        )
      : 1;
  const plug = facts.plug?.value;
  return {
    pack: name,
    count,
    full,
    storage: series * stored[chemistry],
    current: least?.[0],
    limitedBy: least?.[1],
    // The last tenth is slow.
    minutes: capacity !== undefined && least ? Math.round((capacity / least[0]) * 60 * 1.15) : undefined,
    plug:
      plug && charger?.plugs
        ? charger.plugs.items.some((item) => item.value === plug)
          ? 'fits'
          : 'adapter'
        : undefined,
    plugName: plug,
    together,
    cannot: !charger
      ? undefined
      : charger.cells && (series > charger.cells.value.most || series < charger.cells.value.least)
        ? `the charger takes ${charger.cells.text}`
        : charger.chemistries &&
            !charger.chemistries.items.some((item) => item.value === chemistry) &&
            chemistry !== 'LiHV'
          ? `the charger has no mode for ${chemistry}`
          : undefined,
  };
}
