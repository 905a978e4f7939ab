/** The words for a pack on a device that is wired to the battery: too many volts, too few, or more than was promised. */
import type { Fact } from '../build/fact';
import { cellVoltage } from '../plan/cell-voltage';
import type { Worked } from '../plan/worked';
import type { CellCount } from '../text/notation/cells';
import type { SupplyRange } from '../text/notation/voltage-range';
import { exceeds, fallsShort } from './beyond';
import type { Verdict } from './check';
import { cellsOf, volts } from './words';

interface PackFacts {
  readonly cells: Fact<CellCount>;
  readonly input: Fact<SupplyRange>;
  readonly full: Worked<number>;
  readonly chemistry?: Fact<'LiPo' | 'LiHV' | 'Li-ion'>;
  readonly landing?: Fact<number>;
}

export function packOnInput(name: string, { cells, input, full, chemistry, landing }: PackFacts): Verdict | undefined {
  const { series } = cells.value;
  const range = input.value;
  const says = [{ fact: input, says: `the ${name} takes ${input.text}` }];
  const pack = `${cellsOf(series)} pack, ${volts(full.value)} full`;
  if (range.cells !== undefined ? series > range.cells : exceeds(full.value, range.most))
    return {
      at: cells,
      with: says,
      message: `The ${name} takes ${input.text}; this is a ${pack}. It will fail at plug-in. Use a ${name} for ${cellsOf(series)}, feed it from a regulator, or fly a pack with fewer cells.`,
    };
  if (range.cells !== undefined && chemistry?.value === 'LiHV' && exceeds(full.value, range.most) && series > 1)
    return {
      at: chemistry,
      with: says,
      severity: 'warning',
      danger: undefined,
      message: `The ${name} takes ${input.text}, which promises ${volts(range.most)}; this high-voltage pack has ${volts(full.value)} full. Look for its limit in volts and write that, or charge to 4.20 V a cell.`,
    };
  const cell = landing?.value ?? cellVoltage(chemistry?.value).landing;
  const low = series * cell;
  // A range in cells was given by somebody who counted cells, not volts at landing.
  if (range.cells !== undefined ? series < Math.round(range.least / 3.3) : fallsShort(low, range.least))
    return {
      at: cells,
      with: says,
      severity: 'warning',
      danger: undefined,
      message: `The ${name} takes ${input.text}; this ${cellsOf(series)} pack sinks to ${volts(low)} by landing. It cuts out before the flight is over. Use a ${name} that starts lower, or a pack with more cells.`,
    };
  return undefined;
}
