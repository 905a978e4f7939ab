/** Flight packs as they are labelled and weighed. Invented makes of usual sizes; must take nothing from the checks. */

export interface Cells {
  readonly cells: number;
  readonly parallel?: number;
  readonly chemistry: 'LiPo' | 'LiHV' | 'Li-ion';
  readonly capacity: number;
  readonly rate: number;
  /** mOhm of one cell, by a charger */
  readonly resistance: number;
  readonly plug: string;
  readonly wire: number;
  readonly size: readonly [number, number, number];
  readonly weight: number;
}

const pack = (
  cells: number,
  chemistry: Cells['chemistry'],
  capacity: number,
  rate: number,
  resistance: number,
  plug: string,
  wire: number,
  size: Cells['size'],
  weight: number,
  parallel?: number,
): Cells => ({ cells, chemistry, capacity, rate, resistance, plug, wire, size, weight, parallel });

export const packs = {
  whoop65: [
    pack(1, 'LiHV', 300, 75, 40, 'A30', 22, [60, 12, 7], 8.2),
    pack(1, 'LiHV', 300, 75, 45, 'PH2.0', 22, [56, 12, 7], 7.9),
    pack(1, 'LiPo', 260, 80, 48, 'A30', 22, [56, 11, 7], 7.2),
  ],
  whoop75: [
    pack(1, 'LiHV', 450, 80, 25, 'A30', 20, [60, 17, 7], 11.9),
    pack(1, 'LiHV', 550, 90, 20, 'A30', 20, [72, 17, 7], 14.2),
    pack(1, 'LiPo', 450, 80, 26, 'A30', 20, [58, 17, 7], 12),
  ],
  whoop75two: [
    pack(2, 'LiPo', 300, 75, 36, 'XT30', 20, [52, 17, 13], 18.5),
    pack(2, 'LiHV', 450, 75, 27, 'XT30', 20, [60, 17, 13], 24.5),
  ],
  small3: [
    pack(3, 'LiPo', 450, 95, 14, 'XT30', 18, [55, 30, 18], 45),
    pack(3, 'LiHV', 550, 95, 12, 'XT30', 18, [60, 30, 19], 50),
  ],
  small4: [
    pack(4, 'LiPo', 650, 95, 10, 'XT30', 16, [60, 30, 26], 78),
    pack(4, 'LiPo', 750, 95, 8.5, 'XT30', 16, [66, 30, 27], 91),
    pack(4, 'LiHV', 660, 95, 9.5, 'XT30', 16, [62, 30, 26], 78),
  ],
  middle4: [
    pack(4, 'LiPo', 850, 95, 7.5, 'XT30', 16, [68, 30, 31], 104),
    pack(4, 'LiPo', 1000, 95, 6.5, 'XT60', 14, [72, 34, 30], 122),
  ],
  middle6: [
    pack(6, 'LiPo', 1000, 100, 6, 'XT60', 14, [72, 35, 42], 172),
    pack(6, 'LiPo', 850, 100, 7.5, 'XT30', 16, [68, 32, 40], 148),
  ],
  five6: [
    pack(6, 'LiPo', 1300, 120, 3.6, 'XT60', 12, [78, 38, 48], 208),
    pack(6, 'LiPo', 1100, 120, 4.2, 'XT60', 12, [74, 36, 42], 181),
    pack(6, 'LiHV', 1200, 100, 4.2, 'XT60', 12, [76, 37, 44], 190),
    pack(6, 'LiPo', 1400, 130, 3.2, 'XT60', 12, [78, 38, 50], 222),
  ],
  five4: [
    pack(4, 'LiPo', 1500, 110, 3.6, 'XT60', 12, [75, 36, 35], 182),
    pack(4, 'LiPo', 1550, 120, 3.4, 'XT60', 12, [76, 37, 35], 188),
  ],
  long6: [
    pack(6, 'LiPo', 2200, 80, 3, 'XT60', 12, [110, 36, 48], 335),
    pack(6, 'LiPo', 3000, 70, 2.4, 'XT60', 12, [138, 44, 48], 450),
    pack(6, 'Li-ion', 6000, 8, 18, 'XT60', 12, [138, 43, 44], 590, 2),
    pack(6, 'Li-ion', 8400, 7, 17, 'XT60', 12, [138, 64, 44], 860, 2),
  ],
  lift6: [
    pack(6, 'LiPo', 5000, 60, 1.6, 'XT90', 10, [148, 48, 62], 740),
    pack(6, 'LiPo', 6000, 60, 1.4, 'XT90', 10, [155, 50, 66], 880),
  ],
  lift6strong: [
    pack(6, 'LiPo', 5000, 80, 1.4, 'AS150', 8, [150, 50, 64], 770),
    pack(6, 'LiPo', 6200, 80, 1.2, 'AS150', 8, [158, 50, 68], 930),
  ],
  lift8: [
    pack(8, 'LiPo', 4000, 60, 2, 'XT90', 10, [145, 48, 64], 800),
    pack(8, 'LiPo', 5000, 60, 1.7, 'XT90', 10, [150, 50, 72], 980),
  ],
} as const satisfies Record<string, readonly Cells[]>;
