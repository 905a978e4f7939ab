/** A wire that has to be soldered is neither in the list to order nor on the bench. */

import { jointsOf, wireOf } from '../../plan/assembly-joints';
import { boughtParts } from '../../plan/order-needs';
import { check } from '../check';

export default check({
  id: 'wire-for-joint-missing',
  group: 'assembly',
  title: 'No wire of this gauge',
  severity: 'information',
  needs: { wires: 'bench.tools.wires', lead: 'battery-lead.wire' },
  judge({ wires, lead }, craft) {
    const bought = boughtParts(craft).some(
      ({ role, facts }) => role === 'battery-lead' && (facts.use ?? facts['sold-as']),
    );
    const need = wireOf(jointsOf(craft)).filter(({ gauge }) => !(bought && gauge === lead.value));
    // A neighbouring gauge does for thin wires.
    const lost = need.filter(
      ({ gauge }) => !wires.items.some((item) => Math.abs(item.value - gauge) <= (gauge >= 24 ? 2 : 0)),
    );
    if (lost.length === 0) return undefined;
    return {
      at: lead,
      with: [{ fact: wires, says: `the bench has ${wires.text}` }],
      message: `These joints take ${lost.map(({ gauge, length }) => `${length.toFixed(2)} m of ${gauge} AWG`).join(', ')}, which your bench doesn't have. Put it on the list, or see whether it comes with a part.`,
    };
  },
});

export const explanation = {
  why: 'The evening ends at the first joint that lacks its wire.',
  remedy: 'Get half a metre of each gauge.',
  source: 'joints of this build, common practice',
  bad: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: «12 AWG»
    plug: XT60
---
dryfit: bench
tools:
  wires: 28 AWG
`,
  good: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: 12 AWG
    plug: XT60
---
dryfit: bench
tools:
  wires: 12 AWG, 28 AWG
`,
};
