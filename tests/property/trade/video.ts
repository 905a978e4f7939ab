/** Cameras, transmitters and antennas as sold, analog and of two invented digital families. Must take nothing from the checks. */

export interface Unit {
  readonly system: string;
  readonly least: number;
  readonly most: number;
  /** Radio power in mW with the power the unit takes in W. */
  readonly levels: readonly (readonly [milliwatts: number, watts: number])[];
  readonly control: string;
  readonly plugs: readonly string[];
  readonly mounts: readonly string[];
  readonly adhesive: boolean;
  readonly antennas: number;
  readonly weight: number;
  readonly size: string;
}

export const analogUnits = {
  small: {
    system: 'analog',
    least: 3.3,
    most: 5.5,
    levels: [
      [25, 1.1],
      [100, 1.8],
      [200, 2.4],
    ],
    control: 'one-wire 4800',
    plugs: ['U.FL', 'soldered'],
    mounts: [],
    adhesive: true,
    antennas: 1,
    weight: 1.2,
    size: '18x14x3 mm',
  },
  middle: {
    system: 'analog',
    least: 7,
    most: 26.5,
    levels: [
      [25, 2.6],
      [200, 3.8],
      [600, 5.6],
    ],
    control: 'one-wire 4800',
    plugs: ['MMCX', 'U.FL', 'SMA jack'],
    mounts: ['20x20 M2'],
    adhesive: true,
    antennas: 1,
    weight: 6.2,
    size: '29x28x5 mm',
  },
  large: {
    system: 'analog',
    least: 7,
    most: 36,
    levels: [
      [25, 3],
      [400, 5.2],
      [1000, 8.4],
    ],
    control: 'one-wire 9600',
    plugs: ['MMCX', 'RP-SMA jack', 'SMA jack'],
    mounts: ['20x20 M2', '30.5x30.5 M3'],
    adhesive: false,
    antennas: 1,
    weight: 10.4,
    size: '36x36x6 mm',
  },
} as const satisfies Record<string, Unit>;

export const digitalUnits: readonly Unit[] = [
  {
    system: 'clearview',
    least: 7,
    most: 26,
    levels: [
      [25, 8],
      [200, 9],
      [700, 11],
    ],
    control: 'MSP',
    plugs: ['U.FL'],
    mounts: ['20x20 M2', '25.5x25.5 M2'],
    adhesive: false,
    antennas: 1,
    weight: 17.5,
    size: '30x30x11 mm',
  },
  {
    system: 'farsight',
    least: 7,
    most: 36,
    levels: [
      [25, 9],
      [400, 11],
      [1200, 14],
    ],
    control: 'MSP',
    plugs: ['U.FL', 'MMCX'],
    mounts: ['20x20 M2', '30.5x30.5 M3'],
    adhesive: true,
    antennas: 2,
    weight: 32,
    size: '38x38x12 mm',
  },
];

/** The antenna's plug for each plug of a transmitter. */
export const antennaPlug: Readonly<Record<string, string>> = {
  'U.FL': 'U.FL',
  MMCX: 'MMCX',
  'SMA jack': 'SMA plug',
  'RP-SMA jack': 'RP-SMA plug',
  soldered: 'soldered',
};

/** Channels that lie wholly between 5725 and 5875 MHz, 18 MHz wide. */
export const narrowChannels: readonly string[] = ['A3', 'A5', 'B4', 'B6', 'F2', 'F4', 'F7', 'R4', 'R5', 'R6'];
export const digitalChannels: readonly string[] = ['5735 MHz', '5770 MHz', '5805 MHz', '5839 MHz'];
