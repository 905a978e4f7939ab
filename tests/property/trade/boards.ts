/** Flight controllers, motor controllers and the pin orders printed on them. Invented boards of usual kinds; must take nothing from the checks. */

export interface Chip {
  readonly mcu: string;
  /** Ports as a usual board brings them out. */
  readonly uarts: readonly (readonly [name: string, pads: 'rx+tx' | 'rx' | 'tx'])[];
  readonly inverts: boolean;
  readonly i2cUart?: string;
}

const both = (...numbers: number[]) => numbers.map((n) => [`uart${n}`, 'rx+tx'] as const);

export const smallChips: readonly Chip[] = [
  { mcu: 'G473', uarts: both(1, 2, 3, 4), inverts: true },
  { mcu: 'F411', uarts: both(1, 2), inverts: false },
  { mcu: 'F405', uarts: both(1, 2, 3, 6), inverts: false },
];

export const chips: readonly Chip[] = [
  { mcu: 'F722', uarts: [...both(1, 2, 3, 4), ['uart5', 'rx'], ...both(6)], inverts: true },
  { mcu: 'F405', uarts: [...both(1, 2, 3, 4), ['uart5', 'rx'], ...both(6)], inverts: false },
  { mcu: 'H743', uarts: both(1, 2, 3, 4, 6, 7, 8), inverts: true, i2cUart: 'uart3' },
  { mcu: 'AT32F435', uarts: [...both(1, 2, 3, 4), ['uart5', 'rx'], ...both(7)], inverts: true },
  { mcu: 'F745', uarts: both(1, 2, 3, 4, 5, 6, 7), inverts: true },
];

/** Continuous ratings that are sold, with the burst their makers print. */
export const escRatings: readonly (readonly [current: number, burst: number])[] = [
  [5, 7],
  [8, 10],
  [12, 15],
  [15, 20],
  [20, 25],
  [25, 32],
  [35, 45],
  [45, 55],
  [55, 65],
  [60, 70],
  [65, 75],
  [80, 95],
  [100, 120],
];

/** Orders as printed by makers for the cable between the two boards. */
export const pinOrders: readonly (readonly string[])[] = [
  ['VBAT', 'GND', 'CURR', 'TELEM', 'M1', 'M2', 'M3', 'M4'],
  ['GND', 'VBAT', 'M1', 'M2', 'M3', 'M4', 'CURR', 'TELEM'],
  ['VBAT', 'CURR', 'TELEM', 'M1', 'M2', 'M3', 'M4', 'GND'],
  ['VBAT', 'GND', 'CURR', 'TELEM', 'M4', 'M3', 'M2', 'M1'],
  ['M1', 'M2', 'M3', 'M4', 'CURR', 'TELEM', 'VBAT', 'GND'],
  ['GND', 'VBAT', 'CURR', 'TELEM', 'M1', 'M2', 'M3', 'M4'],
  ['TELEM', 'CURR', 'M4', 'M3', 'M2', 'M1', 'VBAT', 'GND'],
];

export const tenPins: readonly string[] = ['VBAT', 'VBAT', 'GND', 'GND', 'CURR', 'TELEM', 'M1', 'M2', 'M3', 'M4'];

export interface BoardForm {
  readonly mount: string;
  readonly hole: number;
  readonly thread: number;
  readonly controller: readonly [number, number, number];
  readonly esc: readonly [number, number, number];
}

export const forms = {
  whoop: { mount: '25.5x25.5 M1.4', hole: 3, thread: 1.4, controller: [29, 29, 6], esc: [29, 29, 6] },
  whoop26: { mount: '26x26 M2', hole: 3, thread: 2, controller: [30, 30, 6], esc: [30, 30, 6] },
  board25: { mount: '25.5x25.5 M2', hole: 3, thread: 2, controller: [36, 34, 8], esc: [36, 34, 8] },
  board20: { mount: '20x20 M3', hole: 4, thread: 3, controller: [32, 32, 7], esc: [34, 37, 7] },
  board20thin: { mount: '20x20 M2', hole: 3, thread: 2, controller: [29, 28, 7], esc: [32, 36, 7] },
  board30: { mount: '30.5x30.5 M3', hole: 4, thread: 3, controller: [38, 38, 8], esc: [41, 45, 7] },
} as const satisfies Record<string, BoardForm>;
