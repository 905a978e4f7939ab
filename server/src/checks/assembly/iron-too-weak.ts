/** The iron is too weak for the battery wires of this craft. */

import { fallsShort } from '../beyond';
import { check } from '../check';

export default check({
  id: 'iron-too-weak',
  group: 'assembly',
  title: 'Iron too weak for thick wires',
  severity: 'warning',
  needs: { wire: 'battery-lead.wire', iron: 'bench.tools.iron' },
  judge({ wire, iron }) {
    if (wire.value > 14 || !fallsShort(iron.value, 60)) return undefined;
    return {
      at: wire,
      with: [{ fact: iron, says: `the iron has ${iron.text}` }],
      message: `${wire.text} on a battery pad takes 60 W or more; your iron has ${iron.text}. The joint stays cold while the pad burns. Borrow a stronger one, with a wide chisel tip.`,
    };
  },
});

export const explanation = {
  why: 'A weak iron makes cold joints on battery pads, and is held there until the pad lifts.',
  remedy: 'Use 60 W or more with a chisel tip of 3 to 5 mm.',
  source: 'common practice: 60 W from 14 AWG on',
  bad: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: «12 AWG»
---
dryfit: bench
tools:
  iron: 30 W
`,
  good: `
dryfit: build
name: Example
parts:
  battery-lead:
    wire: 12 AWG
---
dryfit: bench
tools:
  iron: 65 W
`,
};
