/** The words for a device on a regulator's rail of the wrong voltage. */
import type { Fact } from '../build/fact';
import type { Feed } from '../plan/feeds';
import type { SupplyRange } from '../text/notation/voltage-range';
import { exceeds, fallsShort } from './beyond';
import type { Verdict } from './check';

export function railOnDevice(name: string, feed: Feed | undefined, supply: Fact<SupplyRange>): Verdict | undefined {
  if (!feed || feed.battery) return undefined;
  const says = [{ fact: supply, says: `the ${name} takes ${supply.text}` }];
  if (exceeds(feed.most, supply.value.most))
    return {
      at: feed.said,
      with: says,
      message: `The ${name} takes ${supply.text} and is fed from ${feed.said.text}. It will be damaged. Feed it from a lower rail.`,
    };
  // A rail is as good as its name: 5 V parts live with what a 5 V rail gives.
  if (fallsShort(feed.least, supply.value.least))
    return {
      at: feed.said,
      with: says,
      danger: undefined,
      message: `The ${name} takes ${supply.text}; ${feed.said.text} will not start it. Feed it from a higher rail.`,
    };
  return undefined;
}
