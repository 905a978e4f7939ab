/** The words for any device by how `wiring:` feeds it: from the pack or from a rail. Knows no device. */
import type { Craft, Pack } from '../build/craft';
import type { Fact } from '../build/fact';
import { feedOf, isFedByBattery, wiringOf } from '../plan/feeds';
import type { Worked } from '../plan/worked';
import type { CellCount } from '../text/notation/cells';
import type { SupplyRange } from '../text/notation/voltage-range';
import type { Verdict } from './check';
import { packOnInput } from './pack-on-input';
import { railOnDevice } from './rail-on-device';

interface FedFacts {
  readonly supply: Fact<SupplyRange>;
  readonly cells?: Fact<CellCount>;
  readonly full?: Worked<number>;
  readonly chemistry?: Fact<'LiPo' | 'LiHV' | 'Li-ion'>;
  readonly landing?: Fact<number>;
}

export const isWired =
  (device: string) =>
  (craft: Craft): boolean =>
    wiringOf(craft, device)?.power !== undefined;

export function fedVerdict(
  name: string,
  device: string,
  facts: FedFacts,
  craft: Craft,
  pack: Pack | undefined,
): Verdict | undefined {
  const { supply, cells, full, chemistry, landing } = facts;
  if (isFedByBattery(craft, device))
    return cells && full ? packOnInput(name, { cells, input: supply, full, chemistry, landing }) : undefined;
  return railOnDevice(name, feedOf(craft, device, pack), supply);
}
