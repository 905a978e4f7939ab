/** What parts of this trade usually weigh, for a rough card when nothing was said. All figures: common practice, in grams with their spread. */
import type { Stator } from '../text/notation/stator';

export interface UsualMass {
  /** kg */
  readonly value: number;
  /** kg either way */
  readonly spread: number;
}

const grams = (value: number, spread: number): UsualMass => ({ value: value / 1000, spread: spread / 1000 });

/** Motors with short wires, by stator volume d²h in mm³. */
const motorAnchors: readonly (readonly [volume: number, grams: number])[] = [
  [98, 1.5],
  [128, 1.9],
  [200, 2.6],
  [363, 3.5],
  [591, 6],
  [784, 9],
  [1575, 15],
  [1600, 16.5],
  [3388, 33],
  [4375, 40],
  [5096, 48],
  [9610, 85],
  [14415, 115],
];

export function usualMotorMass(stator: Stator | undefined): UsualMass {
  if (!stator) return grams(30, 20);
  const volume = stator.diameter ** 2 * stator.height * 1e9;
  const first = motorAnchors[0]!;
  const last = motorAnchors.at(-1)!;
  if (volume <= first[0]) return grams((first[1] * volume) / first[0], 0.3);
  for (let i = 1; i < motorAnchors.length; i++) {
    const [low, lowGrams] = motorAnchors[i - 1]!;
    const [high, highGrams] = motorAnchors[i]!;
    if (volume > high) continue;
    const value = lowGrams + ((highGrams - lowGrams) * (volume - low)) / (high - low || 1);
    return grams(value, Math.max(0.2, value * 0.1));
  }
  const value = (last[1] * volume) / last[0];
  return grams(value, value * 0.15);
}

/** Propellers by diameter in m: 0.22 g at 31 mm, 4.5 g at 5 in, 17 g at 10 in. */
export function usualPropellerMass(diameter: number | undefined): UsualMass {
  if (diameter === undefined) return grams(4, 3);
  const value = 4.5 * (diameter / 0.127) ** (diameter < 0.127 ? 2.14 : 1.92);
  return grams(value, value * 0.2);
}

/** Packs by energy-like size: cells x Ah, in grams. 6S 1300 205 g, 1S 300 8 g. */
export function usualPackMass(
  cells: number | undefined,
  ampereHours: number | undefined,
  lithiumIon: boolean,
): UsualMass {
  if (!cells || !ampereHours) return grams(150, 120);
  const perAmpereHour = lithiumIon ? 17.5 : ampereHours < 1 ? 27 : 26;
  const value = cells * ampereHours * perAmpereHour;
  return grams(value, value * 0.1);
}

const byKind: Readonly<Record<string, UsualMass>> = {
  stack: grams(24, 5),
  'all-in-one': grams(9, 4),
  'flight-controller': grams(9, 2),
  esc: grams(15, 4),
  camera: grams(8, 4),
  'video-transmitter': grams(8, 5),
  'video-antenna': grams(6, 4),
  receiver: grams(2, 1),
  'receiver-antenna': grams(0.8, 0.5),
  capacitor: grams(7, 2),
  gps: grams(7, 3),
  buzzer: grams(2, 1),
  lights: grams(4, 3),
  'remote-id': grams(12, 5),
  'action-camera': grams(120, 40),
  harness: grams(1.5, 0.7),
  adapter: grams(3, 2),
  fastener: grams(0.5, 0.4),
  strap: grams(6, 2),
  extra: grams(5, 5),
};

export const usualMass = (kind: string): UsualMass => byKind[kind] ?? grams(5, 5);

/** Plug and wires to the battery, by the plug. */
export function usualLeadMass(plug: string | undefined): UsualMass {
  if (plug === undefined) return grams(12, 8);
  if (/^(?:PH2\.0|A30|other 1S)$/.test(plug)) return grams(1.4, 0.6);
  if (plug === 'XT30') return grams(5, 2);
  if (/^XT60/.test(plug)) return grams(15, 4);
  return grams(30, 12);
}

/** Frames by the size of the craft's propeller in m. */
export function usualFrameMass(diameter: number | undefined): UsualMass {
  if (diameter === undefined) return grams(80, 60);
  if (diameter < 0.045) return grams(4.5, 1.5);
  if (diameter < 0.085) return grams(40, 20);
  if (diameter < 0.12) return grams(55, 25);
  if (diameter < 0.145) return grams(115, 30);
  return grams(200, 60);
}
