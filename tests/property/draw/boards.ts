/** Describes the boards of a drawn build as their makers do, and the cable that joins them rightly. Chooses no ratings. */
import { pinOrders, tenPins } from '../trade/boards';
import type { Branch } from '../tree';
import type { Choices } from './choices';
import type { Luck } from './luck';
import type { SerialPads } from './serial';
import { flag, grams, numbered, size, volts } from './words';

export interface Socketed {
  readonly controller: readonly string[];
  readonly esc: readonly string[];
  readonly series: string;
}

export const socketsOf = (luck: Luck): Socketed => {
  const series = luck.pick(['SH 1.0', 'SH 1.0', 'GH 1.25']);
  if (luck.often(8)) return { controller: tenPins, esc: tenPins, series };
  const controller = luck.pick(pinOrders);
  const esc = luck.often(45) ? controller : luck.pick(pinOrders);
  return { controller, esc, series };
};

const socket = (series: string, pins: readonly string[]): Branch => ({
  series,
  contacts: String(pins.length),
  'counted-from': 'marked pin',
  'seen-from': 'mating face',
  pins: numbered(pins),
});

/** What the board may be connected to: in cells, or in volts where a high-voltage pack wants to know exactly. */
const input = (luck: Luck, { cells, highVoltage }: Choices): string => {
  const most = Math.min(8, cells + luck.below(cells > 3 ? 3 : 1));
  const least = Math.max(1, Math.min(cells, luck.pick([cells - 1, cells - 2, cells])));
  if (!highVoltage && luck.often(60)) return least === most ? `${most}S` : `${least}S-${most}S`;
  return volts(Number((least * 2.75).toFixed(1)), Math.ceil(most * 4.6));
};

export interface Rails {
  readonly five: number;
  readonly high: { readonly volts: number; readonly amperes: number } | undefined;
}

/** The rails a board of this size has. A single cell is raised to 5 V; a high rail wants four cells or more. */
export function railsOf(luck: Luck, { board, cells }: Choices): Rails {
  if (board === 'whoop') return { five: cells === 1 ? 1.2 : 2, high: undefined };
  const high =
    cells >= 4
      ? { volts: luck.pick(cells > 4 ? [9, 9, 10, 12] : [9, 9, 10]), amperes: luck.pick([2, 2.5, 3]) }
      : undefined;
  return { five: luck.pick([2, 2.5, 3]), high };
}

export function controllerOf(
  luck: Luck,
  choices: Choices,
  ports: readonly SerialPads[],
  rails: Rails,
  own: {
    sockets: Socketed | undefined;
    scale: number;
    soft: number;
    rotated: number | undefined;
    video: Branch | undefined;
  },
): Branch {
  const { chip, form, cells } = choices;
  const { high } = rails;
  const total = 5 * rails.five + (high ? high.volts * high.amperes : 0) + 1.7;
  const regulators: Branch = {
    '5V': {
      voltage: '5 V',
      current: `${rails.five} A`,
      'on-usb': 'yes',
      boost: cells === 1 ? 'yes' : luck.maybe(40, 'no'),
    },
    ...(high
      ? { [`${high.volts}V`]: { voltage: `${high.volts} V`, current: `${high.amperes} A`, 'on-usb': 'no' } }
      : {}),
    '3.3V': { voltage: '3.3 V', current: '0.5 A', 'on-usb': 'yes' },
  };
  const compassPort = chip.i2cUart;
  return {
    mcu: chip.mcu,
    input: input(luck, choices),
    mount: form.mount,
    hole: `${form.hole} mm`,
    grommets: 'yes',
    'usb-side': luck.pick(['left', 'left', 'right', 'back']),
    rotated: own.rotated === undefined ? undefined : `${own.rotated} deg`,
    regulators,
    'regulators-total': `${Math.floor(total)} W`,
    uarts: Object.fromEntries(
      ports.map((port) => [
        port.name,
        { pads: port.reserved ? 'none' : port.pads, inverter: port.inverter, reserved: port.reserved },
      ]),
    ),
    'soft-serial': String(own.soft),
    'motor-outputs': chip.uarts.length > 6 ? '8' : '4',
    protocols: ['DShot150', 'DShot300', 'DShot600'],
    bidirectional: 'yes',
    osd: 'analog',
    'camera-pads': 'yes',
    i2c: chip.uarts.length > 3 ? 'yes' : 'no',
    'barometer-address': chip.uarts.length > 4 ? luck.maybe(60, '0x76') : undefined,
    'i2c-uart': compassPort,
    'log-storage': luck.pick(['8 MB', '16 MB', '32 MB']),
    'buzzer-pads': 'yes',
    'led-pad': 'yes',
    usb: 'yes',
    'voltage-sense': 'yes',
    'sensor-scale': luck.maybe(60, String(own.scale)),
    firmware: 'open flight firmware 4.5',
    'esc-socket': own.sockets && socket(own.sockets.series, own.sockets.controller),
    'video-socket': own.video,
    outside: size(form.controller),
    weight: grams(luck, form.controller[0] * 0.22),
  };
}

export function escOf(
  luck: Luck,
  choices: Choices,
  sockets: Socketed | undefined,
  own: { scale: number; capacitor: boolean },
): Branch {
  const { esc, form, cells, highVoltage, board } = choices;
  const single = board === 'singles';
  const most = Math.min(8, cells + luck.below(cells > 3 ? 3 : 1));
  const least = Math.max(1, cells - luck.below(3));
  const pads = cells === 1 ? 20 : cells <= 3 ? 16 : cells === 4 && esc[0] < 30 ? 14 : esc[0] >= 65 ? 10 : 12;
  return {
    type: single ? 'single' : '4-in-1',
    cells: least === most ? `${most}S` : `${least}S-${most}S`,
    'voltage-limit': highVoltage || luck.often(80) ? `${Number((most * 4.6).toFixed(1))} V` : undefined,
    current: `${esc[0]} A`,
    burst: `${esc[1]} A for 10 s`,
    channels: single ? '1' : '4',
    count: single ? '4' : undefined,
    mount: single ? undefined : form.mount,
    hole: single ? undefined : `${form.hole} mm`,
    grommets: single ? undefined : 'yes',
    protocols: luck.pick([
      ['DShot300', 'DShot600'],
      ['DShot150', 'DShot300', 'DShot600'],
    ]),
    bidirectional: 'yes',
    telemetry: luck.pick(['yes', 'yes', 'no']),
    firmware: 'open 32-bit 2.x',
    'current-sensor': single ? 'no' : 'yes',
    'sensor-scale': single ? undefined : String(own.scale),
    pads: single ? undefined : `${pads} AWG`,
    'capacitor-supplied': flag(own.capacitor),
    'controller-socket': sockets && !single ? socket(sockets.series, sockets.esc) : undefined,
    outside: single ? `32x${choices.craft.armWidth - 1}x6 mm` : size(form.esc),
    weight: grams(luck, single ? 6.5 : form.esc[0] * 0.3),
  };
}

/** The cable between the two boards: plain where the orders agree, crossed where one is the other read backwards, else wire by wire. */
export function harnessOf(luck: Luck, { controller, esc, series }: Socketed): Branch {
  const backwards = luck.often(25);
  const [from, to] = backwards ? [controller, esc] : [esc, controller];
  const same = esc.every((role, i) => role === controller[i]);
  const crossed = esc.every((role, i) => role === controller[controller.length - 1 - i]);
  const distance = luck.pick([15, 18, 22]);
  const soldered = !same && luck.often(10);
  const wires = wiresBetween(from, to);
  return {
    between: backwards ? ['flight-controller', 'esc'] : ['esc', 'flight-controller'],
    type: same ? 'straight' : crossed ? 'crossed' : undefined,
    wires: same || crossed ? undefined : wires,
    series,
    contacts: String(esc.length),
    soldered: soldered ? 'yes' : luck.maybe(30, 'no'),
    length: `${distance + luck.pick([18, 20, 25])} mm`,
    distance: `${distance} mm`,
    wire: luck.pick(['28 AWG', '28 AWG', '30 AWG']),
    'home-made': flag(!same),
    weight: grams(luck, 1.2),
  };
}

/** Each contact to its like; of two contacts with one role the first goes to the first. */
function wiresBetween(from: readonly string[], to: readonly string[]): Record<string, string> {
  const used = new Set<number>();
  const wires: Record<string, string> = {};
  from.forEach((role, i) => {
    const there = to.findIndex((other, j) => other === role && !used.has(j));
    if (there === -1) return;
    used.add(there);
    wires[String(i + 1)] = String(there + 1);
  });
  return wires;
}
