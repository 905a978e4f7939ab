/** Describes packs, lead, capacitor and strap of a drawn build. Chooses no motor and no board. */
import type { Cells } from '../trade/packs';
import type { Branch } from '../tree';
import type { Choices } from './choices';
import { fullOf } from './choices';
import type { Luck } from './luck';
import { grams, size } from './words';

const nominal = { LiPo: 3.7, LiHV: 3.8, 'Li-ion': 3.6 } as const;

export function packOf(luck: Luck, pack: Cells, count: number): Branch {
  const energy = pack.cells * nominal[pack.chemistry] * (pack.capacity / 1000);
  return {
    cells: `${pack.cells}S${pack.parallel ? `${pack.parallel}P` : luck.pick(['', '', '1P'])}`,
    chemistry: pack.chemistry,
    capacity: luck.often(20) ? `${pack.capacity / 1000} Ah` : `${pack.capacity} mAh`,
    discharge: `${pack.rate} C`,
    'burst-discharge': luck.maybe(70, `${pack.chemistry === 'Li-ion' ? pack.rate + 4 : pack.rate * 2} C`),
    'cell-resistance': luck.maybe(
      45,
      `${pack.resistance} mOhm${luck.pick(['', ' (measured 2026-10-02)', ' (estimate)'])}`,
    ),
    'landing-voltage': pack.chemistry === 'Li-ion' ? '2.8 V' : luck.maybe(25, '3.3 V'),
    'charge-limit': pack.chemistry === 'Li-ion' ? '0.5 C' : luck.pick(['1 C', '2 C', '5 C']),
    plug: pack.plug,
    'plug-half': 'sockets',
    'balance-pins': pack.cells > 1 ? String(pack.cells + 1) : undefined,
    wire: `${pack.wire} AWG`,
    energy: luck.maybe(50, `${Number(energy.toFixed(2))} Wh`),
    count: String(count),
    outside: size(pack.size),
    weight: grams(luck, pack.weight),
  };
}

export function leadOf(luck: Luck, { packs, cells }: Choices, filter: boolean | undefined): Branch {
  const wire = Math.max(...packs.map((pack) => pack.wire)) - (cells === 2 ? 2 : 0);
  return {
    plug: packs[0]!.plug === 'XT90' ? luck.pick(['XT90', 'XT90-S']) : packs[0]!.plug,
    'plug-half': 'pins',
    wire: `${wire} AWG`,
    length: `${cells <= 2 ? luck.pick([35, 45]) : luck.pick([70, 90, 110])} mm`,
    filter: filter === undefined ? luck.maybe(30, 'no') : filter ? 'yes' : 'no',
    weight: grams(luck, cells === 1 ? 1 : cells === 2 ? 1.8 : wire > 13 ? 5 : wire > 11 ? 14 : 24),
  };
}

/** Of the voltages that are sold, one with half as much again over the fullest pack, or the usual 35 V on six cells. */
export function capacitorOf(luck: Luck, { full, cells, packs }: Choices): Branch {
  const ample = [25, 35, 50, 63].find((voltage) => voltage >= 1.5 * Math.max(...packs.map(fullOf)))!;
  const voltage = cells === 6 && full < 25.5 ? luck.pick([35, 50]) : ample;
  return {
    capacitance: `${cells <= 4 ? luck.pick([470, 680]) : luck.pick([680, 1000, 1000])} uF`,
    voltage: `${voltage} V`,
    'low-esr': 'yes',
    leads: luck.pick(['10 mm', '12 mm', '15 mm']),
    weight: grams(luck, cells <= 4 ? 3.9 : 8),
  };
}

/** Long enough for the thickest pack with a good hold. */
export function strapOf(luck: Luck, { packs }: Choices, slot: number): Branch {
  const round = Math.max(...packs.map(({ size: [length, width, height] }) => 2 * (Math.min(length, width) + height)));
  const long = [150, 180, 200, 220, 250, 280, 300, 330, 380].find((length) => length >= round + 65)!;
  return {
    length: `${long} mm`,
    width: `${luck.pick([slot, slot, Math.max(10, slot - 2)])} mm`,
    count: luck.maybe(30, '2'),
    weight: grams(luck, 5),
  };
}
