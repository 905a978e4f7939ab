/** Limits as a builder knows them: what a build says just inside and just outside of each, worked out from the build's other words. Takes nothing from the checks. */

import type { Pair } from './lay-over';
import { at, type Branch, withAt } from './tree';

export interface TradeLimit {
  readonly check: string;
  readonly limit: string;
  /** Nothing when the build is not of this kind. */
  readonly sides: (pair: Pair) => { readonly inside: Pair; readonly outside: Pair } | undefined;
}

const text = (pair: Pair, path: string): string | undefined => {
  const [head, ...rest] = path.split('.');
  const found = head === 'bench' ? at(pair.bench, rest.join('.')) : at(pair.build, path);
  return typeof found === 'string' ? found : undefined;
};
const number = (pair: Pair, path: string): number | undefined => {
  const said = text(pair, path);
  const value = said === undefined ? Number.NaN : Number.parseFloat(said);
  return Number.isNaN(value) ? undefined : value;
};
const sizes = (pair: Pair, path: string): readonly number[] => (text(pair, path) ?? '').split(/[x ]/).map(Number);
const set = (pair: Pair, path: string, value: string | undefined): Pair => {
  const [head, ...rest] = path.split('.');
  if (head === 'bench') return { ...pair, bench: withAt(pair.bench, rest.join('.'), value) };
  return { ...pair, build: withAt(pair.build, path, value) };
};
const neat = (value: number): string => String(Number(value.toFixed(4)));

/** A limit at one path: the value that still goes, the value that no longer does. */
const sided = (
  pair: Pair,
  path: string,
  inside: number | undefined,
  outside: number | undefined,
  say: (value: string) => string,
): ReturnType<TradeLimit['sides']> =>
  inside === undefined || outside === undefined || Number.isNaN(inside) || Number.isNaN(outside)
    ? undefined
    : { inside: set(pair, path, say(neat(inside))), outside: set(pair, path, say(neat(outside))) };

const mm = (value: string): string => `${value} mm`;
const onePack = (pair: Pair): Pair => ({
  ...pair,
  build: { ...pair.build, packs: { main: (pair.build.packs as Branch).main } },
});
const plainScrew = (pair: Pair): Pair =>
  set(set(pair, 'parts.motors.washer', undefined), 'parts.motors.soft-mount', undefined);
const cells = (pair: Pair): number | undefined => number(pair, 'packs.main.cells');
const full = (pair: Pair): number => (cells(pair) ?? 0) * (text(pair, 'packs.main.chemistry') === 'LiHV' ? 4.35 : 4.2);
const plus = (value: number | undefined, more: number): number | undefined =>
  value === undefined ? undefined : value + more;

export const tradeLimits: readonly TradeLimit[] = [
  {
    check: 'motor-screw-into-winding',
    limit: 'arm and thread together',
    sides: (pair) => {
      const most = plus(
        number(pair, 'parts.frame.arm-thickness'),
        number(pair, 'parts.motors.thread-depth') ?? Number.NaN,
      );
      const thread = text(pair, 'parts.motors.screws')?.split('x')[0];
      return sided(plainScrew(pair), 'parts.motors.screws', most, plus(most, 0.1), (value) => `${thread}x${value} cap`);
    },
  },
  {
    check: 'motor-screw-too-short',
    limit: '2.5 mm of M3, 1.5 mm of M2',
    sides: (pair) => {
      const thread = text(pair, 'parts.motors.screws')?.split('x')[0];
      const hold = thread === 'M3' ? 2.5 : thread === 'M2' ? 1.5 : Number.NaN;
      const least = plus(number(pair, 'parts.frame.arm-thickness'), hold);
      return sided(
        plainScrew(pair),
        'parts.motors.screws',
        least,
        plus(least, -0.1),
        (value) => `${thread}x${value} cap`,
      );
    },
  },
  {
    check: 'propeller-tight-in-duct',
    limit: 'a duct one millimetre wider than its propeller',
    sides: (pair) => {
      const size = text(pair, 'parts.propellers.size') ?? '';
      const wide =
        /^\d+ mm/.test(size) && number(pair, 'parts.frame.duct-diameter') !== undefined
          ? Number.parseFloat(size)
          : Number.NaN;
      return sided(pair, 'parts.frame.duct-diameter', wide + 1, wide + 0.95, mm);
    },
  },
  {
    check: 'propeller-nut-short-of-thread',
    limit: 'five millimetres of M5 for the nut',
    sides: (pair) => {
      const shaft = text(pair, 'parts.motors.shaft') === 'M5' ? number(pair, 'parts.motors.shaft-length') : undefined;
      return sided(pair, 'parts.propellers.hub-thickness', plus(shaft, -5), plus(shaft, -4.9), mm);
    },
  },
  {
    check: 'stack-too-tall',
    limit: 'five millimetres above and below the boards',
    sides: (pair) => {
      const tall = number(pair, 'parts.stack.height');
      return sided(pair, 'parts.frame.stack-height', plus(tall, 5), plus(tall, 4.9), mm);
    },
  },
  {
    check: 'strap-wider-than-slots',
    limit: 'the width of the slots',
    sides: (pair) => {
      const slot =
        number(pair, 'parts.strap.width') === undefined ? undefined : number(pair, 'parts.frame.strap-width');
      return sided(pair, 'parts.strap.width', slot, plus(slot, 1), mm);
    },
  },
  {
    check: 'strap-too-short',
    limit: 'once round the pack and 60 mm',
    sides: (pair) => {
      const [length, width, height] = sizes(pair, 'packs.main.outside') as [number, number, number];
      const round = text(pair, 'parts.strap.length') ? 2 * (Math.min(length, width) + height) : Number.NaN;
      return sided(onePack(pair), 'parts.strap.length', round + 60, round + 59, mm);
    },
  },
  {
    check: 'harness-too-short',
    limit: '15 mm more than the way',
    sides: (pair) => {
      const way = number(pair, 'parts.harness.distance');
      return sided(pair, 'parts.harness.length', plus(way, 15), plus(way, 14.5), mm);
    },
  },
  {
    check: 'capacitor-voltage-low',
    limit: 'half as much again as the full pack',
    sides: (pair) =>
      text(pair, 'parts.capacitor.voltage')
        ? sided(onePack(pair), 'parts.capacitor.voltage', full(pair) * 1.5, full(pair) * 1.49, (value) => `${value} V`)
        : undefined,
  },
  {
    check: 'motor-cells-exceeded',
    limit: 'the cells the motor is meant for',
    sides: (pair) =>
      (cells(pair) ?? 0) < 2
        ? undefined
        : sided(pair, 'parts.motors.cells', cells(pair), plus(cells(pair), -1), (value) => `1S-${value}S`),
  },
  {
    check: 'balance-plug-differs',
    limit: 'one contact more than cells',
    sides: (pair) =>
      sided(pair, 'packs.main.balance-pins', plus(cells(pair), 1), plus(cells(pair), 2), (value) => value),
  },
  {
    check: 'charger-cells-too-few',
    limit: "the charger's cells",
    sides: (pair) =>
      (cells(pair) ?? 0) < 2
        ? undefined
        : sided(pair, 'bench.charger.cells', cells(pair), plus(cells(pair), -1), (value) => `1S-${value}S`),
  },
  {
    check: 'charger-power-low',
    limit: 'one C at full voltage',
    sides: (pair) => {
      const capacity = number(pair, 'packs.main.capacity') ?? Number.NaN;
      const watts = full(pair) * (capacity > 20 ? capacity / 1000 : capacity);
      return sided(onePack(pair), 'bench.charger.power', watts, watts * 0.99, (value) => `${value} W`);
    },
  },
  {
    check: 'pack-over-air-limit',
    limit: '100 Wh',
    sides: (pair) => sided(onePack(pair), 'packs.main.energy', 100, 100.1, (value) => `${value} Wh`),
  },
  {
    check: 'pack-wider-than-plate',
    limit: 'ten millimetres of overhang',
    sides: (pair) => {
      const [length, width] = sizes(pair, 'packs.main.outside') as [number, number];
      const plate = Math.min(length, width) - 10;
      return plate < 5
        ? undefined
        : sided(onePack(pair), 'parts.frame.battery-plate', plate, plate - 0.1, (value) => `200x${value} mm`);
    },
  },
  {
    check: 'flight-controller-voltage-wrong',
    limit: 'the volts of the full pack',
    sides: (pair) =>
      [
        'parts.flight-controller.input',
        'parts.stack.flight-controller.input',
        'parts.all-in-one.flight-controller.input',
      ]
        .filter((path) => text(pair, path) !== undefined && (cells(pair) ?? 0) > 1)
        .map((path) => sided(onePack(pair), path, full(pair), full(pair) - 0.05, (value) => `3 V - ${value} V`))[0],
  },
  {
    check: 'lead-thicker-than-pads',
    limit: 'the gauge of the pads',
    sides: (pair) => {
      const pads = number(pair, 'parts.esc.pads') ?? number(pair, 'parts.stack.esc.pads');
      return sided(pair, 'parts.battery-lead.wire', pads, plus(pads, -2), (value) => `${value} AWG`);
    },
  },
  {
    check: 'current-scale-differs',
    limit: 'a tenth off',
    sides: (pair) => {
      const scale =
        number(pair, 'parts.esc.sensor-scale') ?? number(pair, 'parts.stack.esc.sensor-scale') ?? Number.NaN;
      return sided(pair, 'setup.sensor-scale', scale * 1.095, scale * 1.105, (value) => value);
    },
  },
  {
    check: 'landing-voltage-too-low',
    limit: '3.0 V of a LiPo cell',
    sides: (pair) => {
      const lithium = text(pair, 'packs.main.chemistry') === 'LiPo';
      const bare = set(set(onePack(pair), 'packs.main.landing-voltage', undefined), 'setup.cell-warning', '3.5 V');
      return lithium ? sided(bare, 'setup.cell-landing', 3, 2.99, (value) => `${value} V`) : undefined;
    },
  },
  {
    check: 'receiver-antenna-length-off',
    limit: '15 % off a quarter wave of 2442 MHz',
    sides: (pair) =>
      text(pair, 'parts.receiver-antenna.band') === '2.4 GHz'
        ? sided(pair, 'parts.receiver-antenna.arm-length', 30.7 * 1.145, 30.7 * 1.155, mm)
        : undefined,
  },
];
