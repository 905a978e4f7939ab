/** A powered gate was passed before those that have to come first. */

import { jointsOf } from '../../plan/assembly-joints';
import { stepsOf } from '../../plan/assembly-steps';
import { check } from '../check';

export default check({
  id: 'gate-skipped',
  group: 'assembly',
  title: 'Power before its gate',
  severity: 'warning',
  danger: 'fire',
  needs: { gates: 'build.gates' },
  judge({ gates }, craft) {
    const steps = stepsOf(craft, jointsOf(craft));
    return steps.flatMap((step) => {
      const passed = step.gate && gates.entries.get(step.gate.name);
      if (!passed || !step.gate || !step.powers) return [];
      const before = step.needs.filter((name) => {
        const earlier = gates.entries.get(name);
        return !earlier || earlier.value.date > passed.value.date;
      });
      if (before.length === 0) return [];
      return [
        {
          at: passed,
          apart: step.gate.name,
          message: `The gate \`${step.gate.name}\` was passed with power on, and ${before.map((name) => `\`${name}\``).join(', ')} not before it. Do what is missing with nothing powered, and write its date.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Power before polarity and shorts were checked is how boards burn.',
  remedy: 'Do the earlier gates, and write their dates.',
  source: 'order of work: common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
gates:
  first-power: «2026-11-20»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
gates:
  dry-fit: 2026-11-18
  harness: 2026-11-18
  joints: 2026-11-19
  motor-wires: 2026-11-19
  first-power: 2026-11-20
`,
};
