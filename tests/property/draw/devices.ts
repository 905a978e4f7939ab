/** Describes what is fed and wired on a drawn build: camera, video, receiver, satellites, sound and light. Chooses no feed. */
import { antennaPlug, digitalChannels, narrowChannels } from '../trade/video';
import type { Branch } from '../tree';
import type { Choices } from './choices';
import type { Luck } from './luck';
import { flag, grams, volts } from './words';

export const isAnalog = ({ unit }: Choices): boolean => unit.system === 'analog';

export function cameraOf(luck: Luck, choices: Choices, supply: string): Branch {
  const { cameraWidth, unit } = choices;
  const analog = isAnalog(choices);
  return {
    system: luck.often(10) ? unit.system.toUpperCase() : unit.system,
    width: `${cameraWidth} mm`,
    standard: analog ? luck.pick(['PAL', 'NTSC', 'switchable']) : undefined,
    ratio: luck.pick(['4:3', '16:9', 'switchable']),
    supply,
    current: analog ? luck.pick(['70 mA', '110 mA', '0.12 A']) : luck.pick(['200 mA', '260 mA']),
    overlay: luck.maybe(70, 'no'),
    'lens-ahead': luck.maybe(70, cameraWidth < 15 ? '8 mm' : '12 mm'),
    weight: grams(luck, cameraWidth < 15 ? 1.7 : 8.5),
  };
}

export interface VideoWays {
  readonly plug: string;
  readonly channel: string;
  readonly cameraSupply: boolean;
  /** The flight controller sets channel and power; else a button does. */
  readonly controlled: boolean;
  readonly socket: readonly string[] | undefined;
}

export const videoWays = (luck: Luck, choices: Choices): VideoWays => {
  const analog = isAnalog(choices);
  return {
    plug: choices.onBoardVideo ? luck.pick(['soldered', 'U.FL']) : luck.pick(choices.unit.plugs),
    channel: analog ? luck.pick(narrowChannels) : luck.pick(digitalChannels),
    controlled: true,
    cameraSupply: !analog || (choices.unit.most > 6 && luck.often(40)),
    socket: analog ? undefined : ['9V', 'GND', 'RX', 'TX', 'GND', 'SBUS'],
  };
};

export function videoTransmitterOf(luck: Luck, choices: Choices, ways: VideoWays): Branch {
  const { unit, level, onBoardVideo } = choices;
  const analog = isAnalog(choices);
  return {
    system: unit.system,
    supply: volts(unit.least, unit.most),
    draw: `${level[1]} W`,
    levels: unit.levels.map(([milliwatts]) => `${milliwatts} mW`),
    level: `${level[0]} mW`,
    channels: analog
      ? luck.pick([
          ['A', 'B', 'E', 'F', 'R'],
          ['A', 'B', 'F', 'R'],
        ])
      : digitalChannels,
    channel: ways.channel,
    control: ways.controlled ? unit.control : 'button',
    'channel-table': analog ? 'yes' : luck.maybe(50, 'yes'),
    'antenna-plug': ways.plug,
    antennas: String(unit.antennas),
    'cable-loss': luck.maybe(20, '0.3 dB'),
    mount: unit.mounts.length > 0 && !onBoardVideo ? unit.mounts : undefined,
    adhesive: unit.adhesive || onBoardVideo ? 'yes' : luck.maybe(60, 'no'),
    osd: luck.maybe(70, flag(!analog)),
    'pit-mode': luck.maybe(80, 'yes'),
    'handset-wire': analog ? luck.maybe(50, 'no') : 'yes',
    sensitivity: luck.maybe(40, analog ? '-90 dBm' : '-94 dBm'),
    'camera-supply': ways.cameraSupply ? { voltage: '5 V', current: '0.6 A' } : undefined,
    socket: ways.socket && {
      series: 'SH 1.0',
      contacts: '6',
      'counted-from': 'marked pin',
      'seen-from': 'mating face',
      pins: Object.fromEntries(ways.socket.map((role, i) => [String(i + 1), role])),
    },
    outside: onBoardVideo ? undefined : luck.maybe(70, unit.size),
    weight: onBoardVideo ? undefined : grams(luck, unit.weight),
  };
}

export function videoAntennaOf(luck: Luck, { unit, board }: Choices, ways: VideoWays, hand: string): Branch {
  return {
    plug: antennaPlug[ways.plug],
    length: luck.pick(['60 mm', '80 mm', '120 mm']),
    band: luck.pick(['5.6 GHz - 6.0 GHz', '5650 MHz - 5950 MHz']),
    polarisation: hand,
    gain: luck.pick(['1.4 dBi', '1.6 dBi', '2 dBi']),
    'axial-ratio': hand === 'linear' ? undefined : luck.maybe(70, '1.2 dB'),
    count: unit.antennas > 1 ? String(unit.antennas) : luck.maybe(20, '1'),
    weight: grams(luck, board === 'whoop' ? 0.7 : 3.2),
  };
}

export interface ReceiverWays {
  readonly plainPad: boolean;
  readonly antennaPlug: string;
  readonly supplied: boolean;
}

export function receiverOf(luck: Luck, { link, protocol, onBoardReceiver }: Choices, ways: ReceiverWays): Branch {
  const onBoard = onBoardReceiver !== 'no';
  const protocols = onBoard ? [protocol] : link.protocols;
  return {
    link: luck.often(10) ? link.link.replace(/^./, (letter) => letter.toUpperCase()) : link.link,
    'firmware-major': String(link.firmware),
    band: [link.band],
    protocols,
    protocol: protocols.length > 1 ? protocol : luck.maybe(50, protocol),
    'plain-pad': ways.plainPad ? 'yes' : luck.maybe(20, 'no'),
    supply: onBoard ? undefined : link.supply,
    current: luck.pick(['90 mA', '110 mA']),
    'telemetry-power': luck.pick(['25 mW', '50 mW', '100 mW']),
    sensitivity: luck.maybe(50, '-105 dBm'),
    'antenna-plug': ways.antennaPlug,
    antennas: '1',
    'antenna-supplied': flag(ways.supplied),
    'failsafe-silent': 'yes',
    weight: onBoard ? undefined : grams(luck, 1.1),
  };
}

export const receiverAntennaOf = (luck: Luck, { link }: Choices, plug: string): Branch => ({
  plug,
  band: link.band,
  'arm-length': `${link.arm} mm`,
  'along-carbon': 'no',
  gain: luck.maybe(70, '2 dBi'),
  weight: grams(luck, 0.7),
});

export interface GpsWays {
  readonly protocol: 'UBX' | 'NMEA';
  readonly compass: boolean;
}

export const gpsOf = (luck: Luck, ways: GpsWays): Branch => {
  const socket = ways.compass ? ['5V', 'GND', 'RX', 'TX', 'SCL', 'SDA'] : ['5V', 'GND', 'RX', 'TX'];
  return {
    protocol: ways.protocol,
    baud: luck.pick(['9600', '57600', '115200']),
    supply: luck.pick(['5 V', '4.5 V - 5.5 V', '3.3 V - 5.5 V']),
    current: luck.pick(['45 mA', '60 mA']),
    compass: flag(ways.compass),
    'compass-address': ways.compass ? luck.pick(['0x0D', '0x1E']) : undefined,
    'from-battery-lead': luck.pick(['70 mm', '80 mm', '110 mm']),
    socket: luck.maybe(75, {
      series: ways.compass ? 'GH 1.25' : luck.pick(['SH 1.0', 'GH 1.25']),
      contacts: String(socket.length),
      'counted-from': 'marked pin',
      'seen-from': 'mating face',
      pins: Object.fromEntries(socket.map((role, i) => [String(i + 1), role])),
    }),
    at: luck.maybe(40, '60 mm back, 30 mm up'),
    weight: grams(luck, 8),
  };
};

export const buzzerOf = (luck: Luck): Branch => ({
  'self-powered': luck.pick(['yes', 'no']),
  current: luck.pick(['25 mA', '30 mA']),
  supply: luck.pick(['5 V', '4.5 V - 5.5 V']),
  weight: grams(luck, 2.6),
});

export const lightsOf = (luck: Luck): Branch => ({
  leds: '6',
  'current-each': '40 mA',
  current: luck.maybe(40, '240 mA'),
  supply: luck.pick(['5 V', '4.5 V - 5.5 V']),
  'own-regulator': luck.maybe(60, 'no'),
  weight: grams(luck, 3),
});

export const remoteIdOf = (luck: Luck, own: boolean, serial: boolean): Branch => ({
  'own-battery': flag(own),
  supply: own ? undefined : luck.pick(['5 V', '4.5 V - 5.5 V']),
  current: own ? undefined : '60 mA',
  serial: flag(serial),
  weight: grams(luck, own ? 14 : 6),
});

export const actionCameraOf = (luck: Luck, payload: number, fed: boolean): Branch => ({
  'own-battery': flag(!fed),
  supply: fed ? '5 V' : undefined,
  current: fed ? '0.4 A' : undefined,
  mount: 'printed mount',
  at: luck.maybe(50, '40 mm forward, 35 mm up'),
  weight: grams(luck, payload),
});
