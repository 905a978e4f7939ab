/** The cable joins the 5 V of the ESC with the 5 V of a flight controller that has its own regulator. */
import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';

export default check({
  id: 'regulators-tied-together',
  group: 'power',
  title: 'Two regulators feed one rail',
  severity: 'error',
  danger: 'fire',
  needs: { harness: 'worked.harness', own: 'flight-controller.regulators' },
  when: joinsBoards,
  judge({ harness, own }) {
    const { reading, escPins, at } = harness.value;
    const rails = ['5V', '3V3', '9V', '12V'];
    const tied = reading.pairs.find((pair) => pair.from === pair.to && rails.includes(pair.from));
    if (!tied) return undefined;
    const name = tied.from === '3V3' ? '3.3V' : tied.from;
    const regulator = own.entries.get(name);
    if (!regulator) return undefined;
    return {
      at,
      with: [
        { fact: escPins, says: `contact ${tied.esc} of the ESC gives ${name}` },
        { fact: own, says: `the flight controller makes its own ${name}` },
      ],
      message: `The cable ties the ${name} of the ESC to the ${name} of the flight controller, which has a regulator of its own. The two fight until one burns. Take the wire of contact ${tied.esc} out of the plug and insulate it.`,
    };
  },
});

export const explanation = {
  why: 'Two regulators on one rail push current into one another until one of them burns.',
  remedy: 'Take the 5 V wire out of the plug and insulate it; ground and signals stay.',
  source: 'warnings in published board manuals, as reported',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: 5V, 4: M1 }
  flight-controller:
    regulators:
      5V:
        current: 2 A
    esc-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: 5V, 4: M1 }
  harness:
    type: «straight»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: 5V, 4: M1 }
  flight-controller:
    regulators:
      5V:
        current: 2 A
    esc-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: 5V, 4: M1 }
  harness:
    wires: { 1: 1, 2: 2, 4: 4 }
`,
};
