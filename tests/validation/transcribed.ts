/**
 * A few rows of published measurements, transcribed so that the tests and a report without a data folder have something to
 * stand on. Motors and propellers are described by size.
 *
 * Thrust stands: Cao & Strawson, motor and propeller tests, 2018 (StrawsonDesign/motor_propeller_testing@7031418); a stand with
 * a torque cell, 2019 (alspitz/esc_test@4078609); a table of a university group's craft (ctu-mrs/ctu-mrs.github.io@0428df7).
 * Statics: UIUC Propeller Data Site, volumes 1 and 2 (J. B. Brandt, R. W. Deters, G. K. Ananda, O. D. Dantsker, M. S. Selig,
 * University of Illinois at Urbana-Champaign).
 */
import type { StandCase, StaticCase } from './cases';

const INCH = 0.0254;

export const TRANSCRIBED_STANDS: readonly StandCase[] = [
  {
    name: '22x5 2600 Kv, 5x4x2',
    statorDiameterMm: 22,
    statorHeightMm: 5,
    kv: 2600,
    diameter: 5 * INCH,
    pitch: 4 * INCH,
    blades: 2,
    rows: [
      { throttle: 0.335, thrust: 1.017, voltage: 11.066, current: 2.407, rpm: 9450 },
      { throttle: 0.525, thrust: 1.837, voltage: 11.028, current: 4.303, rpm: 12748 },
      { throttle: 0.81, thrust: 3.823, voltage: 10.86, current: 9.425, rpm: 18510 },
    ],
  },
  {
    name: '18x6 2500 Kv, 5x4x3',
    statorDiameterMm: 18,
    statorHeightMm: 6,
    kv: 2500,
    diameter: 5 * INCH,
    pitch: 4 * INCH,
    blades: 3,
    rows: [
      { throttle: 0.335, thrust: 0.982, voltage: 11.065, current: 1.471, rpm: 9390 },
      { throttle: 0.525, thrust: 1.693, voltage: 11.022, current: 2.953, rpm: 12330 },
      { throttle: 0.905, thrust: 3.71, voltage: 10.794, current: 10.224, rpm: 18733 },
    ],
  },
  {
    name: '22x6 2450 Kv, 5x4.5x3',
    statorDiameterMm: 22,
    statorHeightMm: 6,
    kv: 2450,
    diameter: 5 * INCH,
    pitch: 4.5 * INCH,
    blades: 3,
    rows: [
      { throttle: 0.335, thrust: 1.113, voltage: 11.046, current: 2.3, rpm: 9558 },
      { throttle: 0.525, thrust: 2.004, voltage: 10.987, current: 4.482, rpm: 12592 },
      { throttle: 0.81, thrust: 4.095, voltage: 10.805, current: 10.426, rpm: 17508 },
    ],
  },
  {
    name: '22x5 2400 Kv, 5x4.5x2',
    statorDiameterMm: 22,
    statorHeightMm: 5,
    kv: 2400,
    diameter: 5 * INCH,
    pitch: 4.5 * INCH,
    blades: 2,
    rows: [
      { throttle: 0.335, thrust: 0.984, voltage: 11.097, current: 1.656, rpm: 9051 },
      { throttle: 0.525, thrust: 1.758, voltage: 11.053, current: 3.241, rpm: 11925 },
      { throttle: 0.905, thrust: 4.076, voltage: 10.865, current: 9.612, rpm: 17795 },
    ],
  },
  {
    name: '23x6 2400 Kv, 5x4x3',
    statorDiameterMm: 23,
    statorHeightMm: 6,
    kv: 2400,
    diameter: 5 * INCH,
    pitch: 4 * INCH,
    blades: 3,
    rows: [
      { throttle: 0.43, thrust: 0.741, voltage: 7.392, current: 2.259, rpm: 7644 },
      { throttle: 0.62, thrust: 1.31, voltage: 7.342, current: 3.996, rpm: 10179 },
      { throttle: 1, thrust: 2.968, voltage: 7.18, current: 9.501, rpm: 14858 },
    ],
  },
  {
    name: '22x7 1750 Kv, 7x5.6x3',
    statorDiameterMm: 22,
    statorHeightMm: 7,
    kv: 1750,
    diameter: 7 * INCH,
    pitch: 5.6 * INCH,
    blades: 3,
    rows: [
      { thrust: 2.266, voltage: 15.91, current: 2.295, rpm: 7195 },
      { thrust: 5.71, voltage: 15.703, current: 8.105, rpm: 10900 },
      { throttle: 1, thrust: 13.202, voltage: 14.831, current: 31.706, rpm: 16000 },
    ],
  },
  {
    name: '31x10 780 Kv, 10x4.5x2',
    statorDiameterMm: 31,
    statorHeightMm: 10,
    kv: 780,
    diameter: 10 * INCH,
    pitch: 4.5 * INCH,
    blades: 2,
    rows: [
      { throttle: 0.6, thrust: 6.561, voltage: 16.74, current: 5.47, rpm: 6522 },
      { throttle: 0.8, thrust: 10.346, voltage: 16.55, current: 11.37, rpm: 8345 },
      { throttle: 1, thrust: 15.161, voltage: 16.26, current: 19.88, rpm: 9836 },
    ],
  },
];

export const TRANSCRIBED_STATICS: readonly StaticCase[] = [
  {
    name: '10x5x2 apce',
    family: 'apce',
    blades: 2,
    diameter: 10 * INCH,
    pitch: 5 * INCH,
    rows: [
      { speed: 3630 / 60, ct: 0.094, cp: 0.0366 },
      { speed: 5869 / 60, ct: 0.0977, cp: 0.0373 },
    ],
  },
  {
    name: '8x4x2 apce',
    family: 'apce',
    blades: 2,
    diameter: 8 * INCH,
    pitch: 4 * INCH,
    rows: [
      { speed: 4090 / 60, ct: 0.0921, cp: 0.0393 },
      { speed: 6197 / 60, ct: 0.0961, cp: 0.0401 },
    ],
  },
  {
    name: '9x4.7x2 apcsf',
    family: 'apcsf',
    blades: 2,
    diameter: 9 * INCH,
    pitch: 4.7 * INCH,
    rows: [
      { speed: 3874 / 60, ct: 0.1159, cp: 0.048 },
      { speed: 6026 / 60, ct: 0.1192, cp: 0.0484 },
    ],
  },
  {
    name: '8x4.3x2 gwssf',
    family: 'gwssf',
    blades: 2,
    diameter: 8 * INCH,
    pitch: 4.3 * INCH,
    rows: [
      { speed: 4061 / 60, ct: 0.1109, cp: 0.0466 },
      { speed: 6225 / 60, ct: 0.1116, cp: 0.0445 },
    ],
  },
  {
    name: '9x6x2 apcsp',
    family: 'apcsp',
    blades: 2,
    diameter: 9 * INCH,
    pitch: 6 * INCH,
    rows: [
      { speed: 4674 / 60, ct: 0.1048, cp: 0.0572 },
      { speed: 3970 / 60, ct: 0.111, cp: 0.0592 },
    ],
  },
  {
    name: '8x4x2 apcsp',
    family: 'apcsp',
    blades: 2,
    diameter: 8 * INCH,
    pitch: 4 * INCH,
    rows: [
      { speed: 4124 / 60, ct: 0.0792, cp: 0.041 },
      { speed: 6297 / 60, ct: 0.0865, cp: 0.0384 },
    ],
  },
  {
    name: '5x3.75x2 da4052',
    family: 'da4052',
    blades: 2,
    diameter: 5 * INCH,
    pitch: 3.75 * INCH,
    rows: [
      { speed: 2997 / 60, ct: 0.1194, cp: 0.08 },
      { speed: 6427 / 60, ct: 0.1158, cp: 0.0725 },
    ],
  },
  {
    name: '5x3.75x3 da4052',
    family: 'da4052',
    blades: 3,
    diameter: 5 * INCH,
    pitch: 3.75 * INCH,
    rows: [
      { speed: 3060 / 60, ct: 0.1474, cp: 0.1062 },
      { speed: 6451 / 60, ct: 0.1507, cp: 0.0971 },
    ],
  },
  {
    name: '5x3.75x4 da4052',
    family: 'da4052',
    blades: 4,
    diameter: 5 * INCH,
    pitch: 3.75 * INCH,
    rows: [
      { speed: 2968 / 60, ct: 0.1682, cp: 0.1252 },
      { speed: 5955 / 60, ct: 0.1749, cp: 0.1176 },
    ],
  },
  {
    name: '5x4.3x2 gwsdd',
    family: 'gwsdd',
    blades: 2,
    diameter: 5 * INCH,
    pitch: 4.3 * INCH,
    rows: [
      { speed: 6437 / 60, ct: 0.1618, cp: 0.1034 },
      { speed: 3480 / 60, ct: 0.1508, cp: 0.0827 },
    ],
  },
  {
    name: '4.5x3x2 gwsdd',
    family: 'gwsdd',
    blades: 2,
    diameter: 4.5 * INCH,
    pitch: 3 * INCH,
    rows: [
      { speed: 3970 / 60, ct: 0.117, cp: 0.0571 },
      { speed: 8927 / 60, ct: 0.1212, cp: 0.0576 },
    ],
  },
  {
    name: '3x2x2 gwsdd',
    family: 'gwsdd',
    blades: 2,
    diameter: 3 * INCH,
    pitch: 2 * INCH,
    rows: [
      { speed: 8070 / 60, ct: 0.1325, cp: 0.0759 },
      { speed: 15907 / 60, ct: 0.1367, cp: 0.0664 },
    ],
  },
  {
    name: '3.2x2.2x2 mi',
    family: 'mi',
    blades: 2,
    diameter: 3.2 * INCH,
    pitch: 2.2 * INCH,
    rows: [
      { speed: 7047 / 60, ct: 0.1098, cp: 0.0524 },
      { speed: 15860 / 60, ct: 0.1221, cp: 0.0574 },
    ],
  },
  {
    name: '5x2.65x2 da4002',
    family: 'da4002',
    blades: 2,
    diameter: 5 * INCH,
    pitch: 2.65 * INCH,
    rows: [
      { speed: 2987 / 60, ct: 0.0979, cp: 0.062 },
      { speed: 6520 / 60, ct: 0.0985, cp: 0.055 },
    ],
  },
];
