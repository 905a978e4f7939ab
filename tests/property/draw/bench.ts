/** Describes a bench that goes with a drawn build: radio, goggles, charger and tools of a club member who builds. Chooses no part of the craft. */
import { hexKey } from '../trade/fasteners';
import type { Branch } from '../tree';
import type { Choices } from './choices';
import { fullOf } from './choices';
import type { Luck } from './luck';

export function benchOf(luck: Luck, choices: Choices, hand: string, screws: readonly string[]): Branch {
  const { link, unit, packs, cells, region, train } = choices;
  const keys = new Set([
    '1.5 mm',
    '2.0 mm',
    '2.5 mm',
    ...screws.flatMap((screw) => hexKey[screw.replace(/x\S+/, '')] ?? []),
  ]);
  const watts = Math.max(...packs.map((pack) => (fullOf(pack) * pack.capacity) / 1000));
  return {
    dryfit: 'bench',
    name: 'A bench',
    region: luck.often(50) ? region : undefined,
    experience: luck.pick(['first build', 'some', 'much']),
    radio: {
      link: luck.often(30) ? [link.link, 'otherlink'] : [link.link],
      'firmware-major': String(link.firmware),
      band: luck.often(20) ? [...new Set([link.band, '2.4 GHz'])] : [link.band],
      power: `${link.power} mW`,
      gain: '2 dBi',
    },
    goggles: {
      systems: luck.often(40) ? [unit.system, unit.system === 'analog' ? 'clearview' : 'analog'] : [unit.system],
      polarisation: luck.often(20) && hand !== 'linear' ? ['RHCP', 'LHCP'] : [hand],
      'antenna-plug': luck.pick(['SMA plug', 'RP-SMA plug']),
      gain: '2 dBi',
    },
    charger: {
      cells: cells === 1 ? '1S-2S' : `1S-${Math.max(cells, 6)}S`,
      chemistries: ['LiPo', 'LiHV', 'Li-ion'],
      power: `${Math.ceil(Math.max(40, watts * 1.3) / 10) * 10} W`,
      current: `${Math.max(5, Math.ceil((Math.max(...packs.map((pack) => pack.capacity)) / 1000) * 1.2))} A`,
      plugs: [...new Set(['XT60', ...packs.map((pack) => pack.plug)])],
      balance: String(Math.max(6, cells)),
      'parallel-board': luck.pick(['no', 'no', 'yes']),
    },
    tools: {
      hex: [...keys],
      nuts: ['4 mm', '5.5 mm', '8 mm'],
      iron: luck.pick(['65 W', '80 W', '100 W']),
      'iron-adjustable': 'yes',
      tips: ['chisel', 'bevel', 'knife'],
      'tip-width': '4 mm',
      'iron-temperature': '380 C',
      solder: luck.pick(['Sn63Pb37', 'Sn60Pb40']),
      'solder-diameter': '0.8 mm',
      flux: 'yes',
      wick: 'yes',
      wires: ['10 AWG', '12 AWG', '14 AWG', '16 AWG', '18 AWG', '20 AWG', '22 AWG', '26 AWG', '28 AWG', '30 AWG'],
      'heat-shrink': ['2 mm', '5 mm', '10 mm'],
      meter: 'yes',
      'current-limiter': '1 A',
      'thread-lock': 'yes',
      tweezers: 'yes',
      'pin-needle': 'yes',
      cutters: 'yes',
      strippers: 'yes',
      'propeller-tool': train.motor.shaft === 'M5' ? 'yes' : luck.pick(['yes', 'no']),
      'fume-extraction': 'yes',
      'eye-protection': 'yes',
      'fire-safe-place': 'yes',
      'practice-board': 'yes',
      scale: 'yes',
    },
  };
}
