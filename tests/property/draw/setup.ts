/** Describes how a drawn build is set up and flown. Chooses no part. */
import type { Branch } from '../tree';
import type { Choices } from './choices';
import { isAnalog } from './devices';
import type { Luck } from './luck';

export function setupOf(
  luck: Luck,
  choices: Choices,
  own: { scale: number; rotated: number | undefined; gps: boolean; telemetry: boolean },
): Branch {
  const { cells, highVoltage, board, packs } = choices;
  // Packs of both kinds: what the tender one stands counts for both.
  const cylindrical = packs.every((pack) => pack.chemistry === 'Li-ion');
  const mixed = new Set(packs.map((pack) => pack.chemistry)).size > 1;
  const rapid = board !== 'whoop' && luck.often(50);
  return {
    firmware: 'open flight firmware 4.5',
    'motor-protocol': rapid ? 'DShot600' : 'DShot300',
    bidirectional: luck.pick(['yes', 'yes', 'no']),
    loop: rapid ? '8 kHz' : luck.pick(['4 kHz', '3.2 kHz']),
    spin: choices.craft.spin,
    'board-rotation': own.rotated === undefined ? luck.maybe(70, '0 deg') : `${own.rotated} deg`,
    'cell-count': luck.maybe(highVoltage && mixed ? 50 : 25, String(cells)),
    'cell-full': highVoltage ? '4.4 V' : luck.maybe(30, '4.3 V'),
    'cell-warning': cylindrical ? '3.1 V' : luck.pick(['3.5 V', '3.6 V']),
    'cell-landing': cylindrical ? '2.9 V' : luck.pick(['3.3 V', '3.4 V']),
    'sensor-scale': String(own.scale),
    failsafe: own.gps ? luck.pick(['return', 'drop', 'land']) : luck.pick(['drop', 'drop', 'land']),
    'arm-switch': 'yes',
    'osd-standard': isAnalog(choices) ? luck.pick(['AUTO', 'AUTO']) : undefined,
  };
}

/** What logs of each class usually show: minutes to four fifths of a pack, and the throttle that hovers. */
const flown: Readonly<Record<string, { minutes: number; hoverThrottle: number }>> = {
  'whoop-65': { minutes: 3, hoverThrottle: 46 },
  'whoop-75': { minutes: 3.5, hoverThrottle: 44 },
  'ducted-2.5': { minutes: 3.5, hoverThrottle: 42 },
  'ducted-3': { minutes: 3.8, hoverThrottle: 42 },
  'open-3': { minutes: 4.5, hoverThrottle: 28 },
  'light-3.5': { minutes: 5, hoverThrottle: 30 },
  'freestyle-5': { minutes: 3.8, hoverThrottle: 22 },
  'race-5': { minutes: 2.2, hoverThrottle: 16 },
  'long-range-7': { minutes: 10, hoverThrottle: 33 },
  'lifter-10': { minutes: 11, hoverThrottle: 27 },
};

export function flightOf(luck: Luck, choices: Choices, pack: string, ready: number): Branch {
  const { gentle, packs } = choices;
  const [hover, cruise, punch] = gentle
    ? [10, 85, 5]
    : luck.pick([
        [20, 60, 20],
        [30, 60, 10],
        [10, 80, 10],
      ]);
  const shares = luck.often(40);
  const { minutes, hoverThrottle } = flown[choices.craft.name]!;
  const used = packs[0]!.capacity * 0.8;
  const lasted = minutes * (gentle && packs[0]!.chemistry === 'Li-ion' ? 2 : 1);
  return {
    pack,
    hover: shares ? `${hover} %` : undefined,
    cruise: shares ? `${cruise} %` : undefined,
    punch: shares ? `${punch} %` : undefined,
    'cruise-thrust': luck.maybe(20, '1.3 x weight'),
    'punch-thrust': luck.maybe(20, '60 % of full'),
    altitude: luck.pick(['120 m', '300 m', '0 m']),
    temperature: luck.maybe(50, luck.pick(['20 C', '12 C', '25 C'])),
    reserve: luck.maybe(40, '20 %'),
    'throttle-limit': gentle ? '60 %' : luck.maybe(20, '100 %'),
    weighed: luck.maybe(30, `${Number((ready * luck.pick([0.99, 1, 1.01])).toFixed(1))} g`),
    logged: luck.maybe(20, {
      minutes: `${lasted} min`,
      used: `${Math.round(used)} mAh`,
      current: `${Number(((used / 1000 / lasted) * 60).toFixed(1))} A`,
      'hover-throttle': luck.maybe(50, `${hoverThrottle} %`),
      date: '2026-10-02',
    }),
  };
}
