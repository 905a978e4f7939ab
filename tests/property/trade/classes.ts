/** What is flown together in each class of craft: frames, power trains, packs. Common practice of the trade; must take nothing from the checks. */
import { type Motor, motors } from './motors';
import { type Cells, packs } from './packs';

export interface Propeller {
  readonly size: string;
  /** mm */
  readonly diameter: number;
  readonly bore: string;
  readonly hub: number;
  readonly weight: number;
}

export interface PowerTrain {
  readonly motor: Motor;
  readonly propellers: readonly Propeller[];
  readonly packs: readonly Cells[];
}

export interface CraftClass {
  readonly name: string;
  readonly trains: readonly PowerTrain[];
  /** mm over the diagonal of a true X */
  readonly wheelbase: readonly number[];
  readonly ducted: boolean;
  /** mm of arm under the motor */
  readonly arms: readonly number[];
  readonly armWidth: number;
  readonly material: 'plastic' | 'carbon';
  readonly boards: readonly ('whoop' | 'all-in-one' | 'small stack' | 'large stack' | 'singles')[];
  readonly camera: readonly (14 | 19 | 20)[];
  /** g without motors, boards and packs */
  readonly frame: number;
  readonly spin: 'props in' | 'props out';
}

const inch = 25.4;
const inches = (
  diameter: number,
  pitch: number,
  blades: number,
  bore: string,
  weight: number,
  hub = 6.5,
): Propeller => ({
  size: `${diameter}x${pitch}x${blades}`,
  diameter: diameter * inch,
  bore,
  hub,
  weight,
});
const metric = (diameter: number, pitch: number, blades: number, bore: string, weight: number): Propeller => ({
  size: `${diameter} mm x ${pitch} mm, ${blades} blades`,
  diameter,
  bore,
  hub: 4,
  weight,
});

const p31 = (bore: string) => [metric(31, 20, 3, bore, 0.22), metric(31, 18, 4, bore, 0.24)];
const p40 = [metric(40, 26, 3, '1.5 mm press', 0.33), metric(40, 24, 2, '1.5 mm press', 0.28)];
const d63 = [metric(63, 45, 5, 'T-mount 1.5 mm', 1.3), metric(63, 48, 3, 'T-mount 1.5 mm', 1.1)];
const d76 = (bore: string) => [metric(76, 56, 5, bore, 2.1), metric(76, 60, 3, bore, 1.8)];
const three = [
  inches(3, 1.6, 2, 'T-mount 1.5 mm', 1.1, 5),
  inches(3, 1.8, 3, 'T-mount 1.5 mm', 1.5, 5),
  inches(3, 2, 2, 'T-mount 1.5 mm', 1.3, 5),
];
const threeHalf = (bore: string) => [inches(3.5, 2, 3, bore, 2, 5.5), inches(3.5, 2.5, 2, bore, 1.9, 5.5)];
const five = [
  inches(5.1, 3.6, 3, '5 mm', 4.2),
  inches(5.1, 4.1, 3, '5 mm', 4.4),
  inches(5, 4.3, 3, '5 mm', 4.1),
  inches(5, 3.7, 3, '5 mm', 4),
];
const race = [inches(5.1, 4.6, 3, '5 mm', 4.4), inches(5, 4.6, 3, '5 mm', 4.1)];
const seven = [inches(7, 3.5, 2, '5 mm', 7.2, 7), inches(7, 4, 2, '5 mm', 7.6, 7), inches(7, 3.5, 3, '5 mm', 8.8, 7)];
const tenLight = [inches(10, 4.5, 2, '5 mm', 15.5, 8), inches(10, 5, 2, '5 mm', 16, 8)];
const ten = [...tenLight, inches(10, 5, 3, '5 mm', 19, 8)];

export const classes: readonly CraftClass[] = [
  {
    name: 'whoop-65',
    trains: [
      { motor: motors.m0702, propellers: p31('1.0 mm press'), packs: packs.whoop65 },
      {
        motor: motors.m0802hot,
        propellers: p31('1 mm press'),
        packs: packs.whoop65.filter((pack) => pack.plug === 'A30'),
      },
    ],
    wheelbase: [65, 66],
    ducted: true,
    arms: [1.5, 1.6],
    armWidth: 6,
    material: 'plastic',
    boards: ['whoop'],
    camera: [14],
    frame: 3,
    spin: 'props in',
  },
  {
    name: 'whoop-75',
    trains: [
      { motor: motors.m0802, propellers: p40, packs: packs.whoop75 },
      { motor: motors.m1002, propellers: p40, packs: packs.whoop75 },
      { motor: motors.m1103, propellers: p40, packs: packs.whoop75two },
    ],
    wheelbase: [75, 76],
    ducted: true,
    arms: [1.6, 1.8],
    armWidth: 7,
    material: 'plastic',
    boards: ['whoop'],
    camera: [14],
    frame: 4.3,
    spin: 'props in',
  },
  {
    name: 'ducted-2.5',
    trains: [
      { motor: motors.m1303, propellers: d63, packs: packs.small4 },
      { motor: motors.m1404, propellers: d63, packs: packs.small4 },
    ],
    wheelbase: [112, 115],
    ducted: true,
    arms: [2, 2.5],
    armWidth: 9,
    material: 'carbon',
    boards: ['all-in-one'],
    camera: [14, 19],
    frame: 58,
    spin: 'props in',
  },
  {
    name: 'ducted-3',
    trains: [
      { motor: motors.m1404low, propellers: d76('T-mount 1.5 mm'), packs: packs.middle4 },
      { motor: motors.m1507, propellers: d76('5 mm'), packs: packs.middle4 },
      { motor: motors.m1507six, propellers: d76('T-mount 1.5 mm'), packs: packs.middle6 },
    ],
    wheelbase: [130, 138],
    ducted: true,
    arms: [2.5, 3],
    armWidth: 10,
    material: 'carbon',
    boards: ['all-in-one', 'small stack'],
    camera: [19, 20],
    frame: 92,
    spin: 'props in',
  },
  {
    name: 'open-3',
    trains: [
      { motor: motors.m1303, propellers: three, packs: packs.small3 },
      { motor: motors.m1404, propellers: three.filter((one) => one.size !== '3x1.8x3'), packs: packs.small4 },
      { motor: motors.m1404low, propellers: three, packs: packs.small4 },
    ],
    wheelbase: [135, 140, 148],
    ducted: false,
    arms: [2.5, 3],
    armWidth: 9,
    material: 'carbon',
    boards: ['all-in-one'],
    camera: [14, 19],
    frame: 24,
    spin: 'props in',
  },
  {
    name: 'light-3.5',
    trains: [
      { motor: motors.m1404low, propellers: threeHalf('T-mount 1.5 mm'), packs: packs.small4 },
      { motor: motors.m2004, propellers: threeHalf('T-mount 2 mm'), packs: packs.middle4 },
    ],
    wheelbase: [155, 162],
    ducted: false,
    arms: [3, 3.5],
    armWidth: 10,
    material: 'carbon',
    boards: ['all-in-one', 'small stack'],
    camera: [19, 20],
    frame: 40,
    spin: 'props out',
  },
  {
    name: 'freestyle-5',
    trains: [
      { motor: motors.m2207, propellers: five, packs: packs.five6 },
      { motor: motors.m2306, propellers: five, packs: packs.five6 },
      { motor: motors.m2207four, propellers: five, packs: packs.five4 },
    ],
    wheelbase: [215, 225, 230],
    ducted: false,
    arms: [5, 5.5, 6],
    armWidth: 14,
    material: 'carbon',
    boards: ['small stack', 'large stack', 'large stack'],
    camera: [19, 20],
    frame: 118,
    spin: 'props out',
  },
  {
    name: 'race-5',
    trains: [
      { motor: motors.m2207race, propellers: race, packs: packs.five6 },
      { motor: motors.m2207half, propellers: race, packs: packs.five6 },
    ],
    wheelbase: [205, 210, 220],
    ducted: false,
    arms: [5, 6],
    armWidth: 11,
    material: 'carbon',
    boards: ['small stack', 'large stack', 'singles'],
    camera: [19],
    frame: 72,
    spin: 'props out',
  },
  {
    name: 'long-range-7',
    trains: [
      { motor: motors.m2806, propellers: seven, packs: packs.long6 },
      { motor: motors.m2507, propellers: seven, packs: packs.long6 },
    ],
    wheelbase: [295, 305, 315],
    ducted: false,
    arms: [5, 6],
    armWidth: 16,
    material: 'carbon',
    boards: ['large stack'],
    camera: [19, 20],
    frame: 178,
    spin: 'props out',
  },
  {
    name: 'lifter-10',
    trains: [
      { motor: motors.m3110, propellers: tenLight, packs: packs.lift6 },
      { motor: motors.m3115six, propellers: ten, packs: packs.lift6strong },
      { motor: motors.m3115, propellers: tenLight, packs: packs.lift8 },
    ],
    wheelbase: [410, 430],
    ducted: false,
    arms: [6, 7],
    armWidth: 22,
    material: 'carbon',
    boards: ['large stack', 'singles'],
    camera: [19, 20],
    frame: 420,
    spin: 'props out',
  },
];
