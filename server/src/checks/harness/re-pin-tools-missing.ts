/** Contacts of the cable have to be moved, and the bench has no needle for it. */
import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';
import { settled } from '../harness-words';

export default check({
  id: 're-pin-tools-missing',
  group: 'harness',
  title: 'No tool to move contacts',
  severity: 'information',
  needs: { harness: 'worked.harness', needle: 'bench.tools.pin-needle' },
  when: joinsBoards,
  judge({ harness, needle }) {
    const moves = settled(harness.value)?.moves.length ?? 0;
    if (needle.value || moves === 0) return undefined;
    return {
      at: harness.value.at,
      with: [{ fact: needle, says: 'the bench has no needle' }],
      message: `${moves} contacts of this cable have to be moved, and your bench has no needle for that. Get one of 0.5 mm and a spare lead: the tongues stand one or two extractions.`,
    };
  },
});

export const explanation = {
  why: 'The tongues of 1.0 mm contacts break when they are levered with anything thicker.',
  remedy: 'Get a 0.5 mm needle and a spare lead or two.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1, 4: M2 }
  flight-controller:
    esc-socket:
      counted-from: marked pin
      pins: { 1: GND, 2: VBAT, 3: M1, 4: M2 }
  harness:
    type: «straight»
---
dryfit: bench
tools:
  pin-needle: no
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1, 4: M2 }
  flight-controller:
    esc-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1, 4: M2 }
  harness:
    type: straight
---
dryfit: bench
tools:
  pin-needle: no
`,
};
