/** What a pack holds, from cells, chemistry and capacity. */
import type { CellCount } from '../text/notation/cells';
import { cellVoltage } from './cell-voltage';

/** Wh at the nominal voltage; `ampereHours` is that of the whole pack. */
export const packEnergy = (cells: CellCount, ampereHours: number, chemistry?: 'LiPo' | 'LiHV' | 'Li-ion'): number =>
  cells.series * cellVoltage(chemistry).nominal * ampereHours;
