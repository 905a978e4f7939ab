/** What each class of craft usually has: common practice, from memory of the trade, for workspaces with fewer than three references. Every face that shows it says so. */

export interface Practice {
  readonly field: string;
  readonly title: string;
  /** `1750 to 1850 Kv on 6S` */
  readonly usual: string;
}

type Row = readonly [
  motors: string,
  speed: string,
  packs: string,
  esc: string,
  propeller: string,
  ready: string,
  video: string,
  mounts: string,
];

const rows: Readonly<Record<string, Row>> = {
  'whoop-65': [
    '0702 to 0802',
    '22000 to 30000 Kv on 1S',
    '1S 260 to 320 mAh LiHV',
    'all-in-one, 5 to 12 A',
    '31 mm, 2 to 4 blades',
    '24 to 30 g',
    '25 to 200 mW, or small digital',
    '25.5x25.5 or 26x26',
  ],
  'whoop-75': [
    '0802 to 1103',
    '11000 to 23000 Kv on 1S',
    '1S 380 to 650 mAh, 2S 300 to 450 mAh',
    'all-in-one, 8 to 15 A',
    '40 mm',
    '38 to 52 g',
    '25 to 400 mW',
    '25.5x25.5',
  ],
  'ducted-2.5': [
    '1303.5 to 1404',
    '4000 to 5500 Kv on 4S',
    '4S 550 to 850 mAh',
    'all-in-one, 15 to 25 A',
    '51 to 63 mm',
    '190 to 270 g',
    'digital, or 200 to 600 mW',
    '25.5x25.5',
  ],
  'ducted-3': [
    '1404 to 1507, 2004',
    '3600 to 4600 Kv on 4S, 2600 to 3000 Kv on 6S',
    '4S 850 to 1300 mAh, 6S 850 to 1100 mAh',
    '20 to 45 A',
    '76 mm or 3 in',
    '330 to 500 g with a camera',
    'digital, or 600 mW',
    '25.5x25.5 or 20x20',
  ],
  'open-3': [
    '1203 to 1404',
    '4500 to 8000 Kv on 2S to 4S',
    '2S to 4S 300 to 650 mAh',
    'all-in-one, 12 to 20 A',
    '3 in, pitch 1.6 to 3',
    '95 to 180 g',
    '200 to 400 mW',
    '25.5x25.5',
  ],
  'light-3.5': [
    '1404 to 2004',
    '2700 to 3800 Kv on 4S',
    '4S 650 to 850 mAh',
    '20 to 35 A',
    '3.5 in, pitch 2 to 3',
    '210 to 270 g',
    'analog or digital',
    '20x20 or 25.5x25.5',
  ],
  'freestyle-5': [
    '2207 or 2306',
    '1750 to 1850 Kv on 6S, 2400 to 2600 Kv on 4S',
    '6S 1100 to 1300 mAh, 4S 1300 to 1500 mAh',
    '45 to 60 A, F7-class controller',
    '5.1 in, pitch 4.1 to 4.8, 3 blades',
    '600 to 780 g without an action camera',
    '600 mW to 2 W analog, or digital',
    '30.5x30.5 and 20x20',
  ],
  'race-5': [
    '2207, 2306, 2207.5',
    '1950 to 2150 Kv on 6S',
    '6S 1050 to 1400 mAh',
    '50 to 65 A',
    '5.1 in, pitch 4.6 to 5.1, 3 blades',
    '450 to 600 g',
    '25 to 200 mW analog, as the event says',
    '20x20',
  ],
  'long-range-7': [
    '2507 to 2808, 2806.5',
    '1250 to 1700 Kv on 6S',
    '6S 1800 to 3000 mAh LiPo, 3000 to 5000 mAh Li-ion',
    '45 to 60 A',
    '6 to 7 in, pitch 3 to 4.5, 2 or 3 blades',
    '850 to 1500 g',
    '800 mW to 2 W, or digital; satellites',
    '30.5x30.5',
  ],
  'lifter-10': [
    '3110 to 3115',
    '800 to 1100 Kv on 6S, 650 to 850 Kv on 8S',
    '6S 4000 to 8000 mAh, 8S 3300 to 6000 mAh',
    '60 to 80 A',
    '10 in, pitch 4.5 to 5',
    '2500 to 4500 g',
    '1 to 2.5 W, or digital',
    '30.5x30.5',
  ],
};

const titles: readonly (readonly [field: string, title: string])[] = [
  ['parts.motors.stator', 'Motor size'],
  ['parts.motors.kv', 'Motor speed'],
  ['packs.capacity', 'Packs'],
  ['parts.esc.current', 'ESC'],
  ['parts.propellers.size', 'Propeller'],
  ['flight.weighed', 'Ready to fly'],
  ['parts.video-transmitter.system', 'Video'],
  ['parts.flight-controller.mount', 'Boards'],
];

export const practiceOf = (craftClass: string): readonly Practice[] =>
  (rows[craftClass] ?? []).map((usual, i) => ({ field: titles[i]![0], title: titles[i]![1], usual }));

export const practisedClasses: readonly string[] = Object.keys(rows);
