/** All trade notations by the name the schemas call them, so that a new one is added in its own file and here. */
import { kept } from '../kept';
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
  stator: kept(readStator),
  cells: kept(readCellRange),
  'pack-cells': kept(readCellCount),
  'propeller-size': kept(readPropellerSize),
  'board-mount': kept(readBoardMount),
  'motor-mount': kept(readMotorMount),
  screw: kept(readScrew),
  thread: kept(readThread),
  shaft: kept(readShaft),
  gauge: kept(readGauge),
  'short-current': kept(readShortCurrent),
  'supply-range': kept(readSupplyRange),
  'frequency-range': kept(readFrequencyRange),
  size: kept(readSize),
  position: kept(readPosition),
  'thrust-level': kept(readThrustLevel),
  'serial-port': kept(readSerialPort),
  rail: kept(readRail),
  money: kept(readMoney),
  date: kept(readDate),
  gate: kept(readGate),
  number: kept(readNumber),
  count: kept(readCount),
  flag: kept(readFlag),
};
