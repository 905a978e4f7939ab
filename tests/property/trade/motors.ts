/** Motors as the trade sells them, with the figures of sellers' pages. Invented models of real sizes; must take nothing from the checks. */

export interface Motor {
  readonly stator: string;
  readonly kv: number;
  readonly cells: readonly [number, number];
  readonly mount: string;
  readonly screws: 3 | 4;
  readonly thread: 1.4 | 2 | 3;
  /** mm of thread before the winding */
  readonly depth: number;
  readonly shaft: string;
  readonly shaftLength: number;
  /** mOhm from wire to wire */
  readonly resistance: number;
  readonly noLoad: number;
  /** A for 10 s, by the seller */
  readonly peak: number;
  readonly wire: number;
  readonly wireLength: number;
  readonly weight: number;
  readonly stand?: Stand;
}

/** Rows that a seller prints for one propeller. */
export interface Stand {
  readonly propeller: string;
  readonly voltage: number;
  readonly rows: readonly (readonly [throttle: number, grams: number, amperes: number])[];
}

const whoop = { mount: '3 holes on 6.6 mm M1.4', screws: 3, thread: 1.4, depth: 2, wire: 30 } as const;
const nine = { mount: '9x9 M2', screws: 4, thread: 2, depth: 2.5 } as const;
const twelve = { mount: '12x12 M2', screws: 4, thread: 2, depth: 3 } as const;
const sixteen = { mount: '16x16 M3', screws: 4, thread: 3, depth: 4, shaft: 'M5', shaftLength: 14 } as const;
const nineteen = { mount: '19x19 M3', screws: 4, thread: 3, depth: 4.5, shaft: 'M5', shaftLength: 15 } as const;

const make = (
  base: Omit<Motor, 'stator' | 'kv' | 'cells' | 'resistance' | 'noLoad' | 'peak' | 'weight' | 'wireLength'>,
  stator: string,
  kv: number,
  cells: readonly [number, number],
  resistance: number,
  noLoad: number,
  peak: number,
  wireLength: number,
  weight: number,
): Motor => ({ ...base, stator, kv, cells, resistance, noLoad, peak, wireLength, weight });

const press = (diameter: string, length = 4.5) => ({ ...whoop, shaft: `${diameter} mm press`, shaftLength: length });
const tee = (base: typeof nine | typeof twelve, wire: number, diameter = '1.5') => ({
  ...base,
  wire,
  shaft: `T-mount ${diameter} mm`,
  shaftLength: 5.5,
});

export const motors = {
  m0702: make(press('1.0'), '0702', 29000, [1, 1], 300, 0.3, 4.5, 40, 1.5),
  m0802hot: make(press('1.0'), '0802', 25000, [1, 1], 240, 0.4, 6, 42, 1.9),
  m0802: {
    ...make(press('1.5', 5), '0802', 22000, [1, 1], 250, 0.38, 6, 55, 2),
    stand: {
      propeller: '40 mm x 26 mm, 3 blades',
      voltage: 4,
      rows: [
        [50, 12, 1.4],
        [100, 30, 4.6],
      ],
    },
  },
  m1002: make(press('1.5', 5), '1002', 20000, [1, 1], 180, 0.45, 8, 55, 2.7),
  m1103: make(
    { ...nine, wire: 28, shaft: '1.5 mm press', shaftLength: 5 },
    '1103',
    10000,
    [2, 3],
    190,
    0.5,
    9,
    55,
    3.7,
  ),
  m1303: {
    ...make(tee(nine, 26), '1303.5', 5500, [3, 4], 180, 0.5, 15, 95, 6.2),
    stand: {
      propeller: '63 mm x 45 mm, 5 blades',
      voltage: 15.8,
      rows: [
        [50, 110, 3.4],
        [100, 330, 13.5],
      ],
    },
  },
  m1404: {
    ...make(tee(nine, 24), '1404', 4600, [3, 4], 140, 0.6, 20, 100, 9.2),
    stand: {
      propeller: '3x1.6x2',
      voltage: 15.8,
      rows: [
        [50, 140, 2.9],
        [100, 430, 17],
      ],
    },
  },
  m1404low: make(tee(nine, 24), '1404', 3800, [3, 4], 190, 0.5, 18, 110, 9.3),
  m1507: make({ ...twelve, wire: 22, shaft: 'M5', shaftLength: 13 }, '1507', 3600, [3, 4], 95, 0.9, 28, 110, 15.2),
  m1507six: make(tee(twelve, 22), '1507', 2700, [5, 6], 160, 0.7, 24, 110, 15),
  m2004: make(tee(twelve, 22, '2'), '2004', 3000, [3, 4], 110, 0.6, 24, 120, 16.6),
  m2207: {
    ...make({ ...sixteen, wire: 20 }, '2207', 1800, [5, 6], 52, 1.3, 50, 155, 33),
    stand: {
      propeller: '5.1x3.6x3',
      voltage: 24,
      rows: [
        [50, 500, 8.6],
        [100, 1560, 36],
      ],
    },
  },
  m2306: make({ ...sixteen, wire: 20 }, '2306', 1750, [5, 6], 58, 1.2, 46, 150, 32),
  m2207four: make({ ...sixteen, wire: 20 }, '2207', 2500, [3, 4], 38, 1.6, 48, 150, 33),
  m2207race: make({ ...sixteen, wire: 20 }, '2207', 2050, [5, 6], 40, 1.6, 60, 150, 31.8),
  m2207half: make({ ...sixteen, wire: 18 }, '2207.5', 1960, [5, 6], 44, 1.5, 58, 145, 33.6),
  m2806: {
    ...make({ ...nineteen, wire: 18 }, '2806.5', 1300, [5, 6], 60, 1.1, 48, 220, 47),
    stand: {
      propeller: '7x3.5x2',
      voltage: 24,
      rows: [
        [50, 640, 7.6],
        [100, 1900, 33],
      ],
    },
  },
  m2507: make({ ...sixteen, wire: 18 }, '2507', 1500, [5, 6], 58, 1.2, 48, 210, 40),
  m3110: {
    ...make({ ...nineteen, wire: 16 }, '3110', 900, [5, 6], 60, 1.2, 62, 280, 84),
    stand: {
      propeller: '10x4.5x2',
      voltage: 24,
      rows: [
        [50, 1000, 9.4],
        [100, 2900, 42],
      ],
    },
  },
  m3115: make({ ...nineteen, wire: 16 }, '3115', 640, [6, 8], 75, 1.3, 62, 290, 116),
  m3115six: make({ ...nineteen, wire: 16 }, '3115', 900, [5, 6], 40, 1.6, 75, 290, 115),
} as const satisfies Record<string, Motor>;
