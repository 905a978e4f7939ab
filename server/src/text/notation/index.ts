/** All trade notations by the name the schemas call them, so that a new one is added in its own file and here. */
import type { Read } from '../quantity';
import { type CellCount, type CellRange, readCellCount, readCellRange } from './cells';
import { type FrequencyRange, readFrequencyRange } from './frequency-range';
import { type PassedGate, readGate } from './gate';
import { readShortCurrent, type ShortCurrent } from './limit';
import { type Money, readMoney } from './money';
import { type BoardMount, type MotorMount, readBoardMount, readMotorMount } from './mount';
import { readCount, readDate, readFlag, readNumber } from './plain';
import { readSerialPort, type SerialPort } from './port';
import { type Position, readPosition } from './position';
import { type PropellerSize, readPropellerSize } from './propeller-size';
import { type Rail, readRail } from './rail';
import { readScrew, readThread, type Screw } from './screw';
import { readShaft, type Shaft } from './shaft';
import { readSize, type Size } from './size';
import { readStator, type Stator } from './stator';
import { readThrustLevel, type ThrustLevel } from './thrust-level';
import { readSupplyRange, type SupplyRange } from './voltage-range';
import { readGauge } from './wire';

export interface Notations {
  stator: Stator;
  cells: CellRange;
  'pack-cells': CellCount;
  'propeller-size': PropellerSize;
  'board-mount': BoardMount;
  'motor-mount': MotorMount;
  screw: Screw;
  thread: number;
  shaft: Shaft;
  gauge: number;
  'short-current': ShortCurrent;
  'supply-range': SupplyRange;
  'frequency-range': FrequencyRange;
  size: Size;
  position: Position;
  'thrust-level': ThrustLevel;
  'serial-port': SerialPort;
  rail: Rail;
  money: Money;
  date: string;
  gate: PassedGate;
  number: number;
  count: number;
  flag: boolean;
}

export type Notation = keyof Notations;

export const readers: { readonly [N in Notation]: (text: string) => Read<Notations[N]> } = {
  stator: readStator,
  cells: readCellRange,
  'pack-cells': readCellCount,
  'propeller-size': readPropellerSize,
  'board-mount': readBoardMount,
  'motor-mount': readMotorMount,
  screw: readScrew,
  thread: readThread,
  shaft: readShaft,
  gauge: readGauge,
  'short-current': readShortCurrent,
  'supply-range': readSupplyRange,
  'frequency-range': readFrequencyRange,
  size: readSize,
  position: readPosition,
  'thrust-level': readThrustLevel,
  'serial-port': readSerialPort,
  rail: readRail,
  money: readMoney,
  date: readDate,
  gate: readGate,
  number: readNumber,
  count: readCount,
  flag: readFlag,
};
