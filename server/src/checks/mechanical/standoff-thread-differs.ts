/** The screws for the frame have another thread than its standoffs. */

import { check } from '../check';

export default check({
  id: 'standoff-thread-differs',
  group: 'mechanical',
  title: 'Frame screws do not go into the standoffs',
  severity: 'error',
  needs: { standoffs: 'frame.standoff-thread', screws: 'frame.frame-screws' },
  // Small frames have neither.
  when: (craft) => craft.roles.frame?.['standoff-thread'] !== undefined,
  judge({ standoffs, screws }, craft) {
    const bought = [...(craft.roles.fasteners?.entries.values() ?? [])].filter(
      (one) => one.for?.value === 'frame' && one.screw,
    );
    const all = [...screws.items, ...bought.flatMap((one) => (one.screw ? [one.screw] : []))];
    if (all.some((screw) => screw.value.thread === standoffs.value)) return undefined;
    return {
      at: screws,
      with: [{ fact: standoffs, says: `the standoffs are ${standoffs.text}` }],
      message: `The standoffs are ${standoffs.text}, the frame's screws ${screws.text}. They do not go together. Add ${standoffs.text} screws (a fastener for \`frame\`), or other standoffs.`,
    };
  },
});

export const explanation = {
  why: 'Screws of another thread fall through the standoff or strip it.',
  remedy: 'Take screws with the thread of the standoffs.',
  source: 'ISO 261 metric threads',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    standoff-thread: M2
    frame-screws: «M3x8 button»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    standoff-thread: M3
    frame-screws: M3x8 button
`,
};
