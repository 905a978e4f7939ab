/** A device is fed from a rail that nobody gives. */
import { check } from '../check';

export default check({
  id: 'rail-unknown',
  group: 'power',
  title: 'Fed from a rail that is not there',
  severity: 'error',
  needs: { rails: 'worked.rails' },
  when: (craft) => [...(craft.said.wiring?.entries.values() ?? [])].some((entry) => entry.power),
  judge({ rails }) {
    const known = rails.value.ledgers.map((ledger) => ledger.rail);
    return rails.value.lost.map(({ device, said }) => {
      const wanted = said.value.volts ?? 0;
      const near = [...rails.value.ledgers].sort((a, b) => Math.abs(a.volts - wanted) - Math.abs(b.volts - wanted))[0];
      return {
        at: said,
        with: [{ fact: rails, says: `the board gives ${known.join(', ')}` }],
        message: `The ${device.replaceAll('-', ' ')} is fed from ${said.text}; the flight controller gives ${known.join(' and ') || 'no rail'}.${near && Math.abs(near.volts - wanted) <= 1.5 ? ` Use ${near.rail}.` : ' Use one of those if it takes it, or the battery.'}`,
      };
    });
  },
});

export const explanation = {
  why: 'A wire to a rail that does not exist has no pad.',
  remedy: 'Use a rail that the board has.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      5V: { current: 2 A }
      9V: { current: 2 A }
  video-transmitter:
    system: analog
wiring:
  video-transmitter:
    power: «10V»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      5V: { current: 2 A }
      9V: { current: 2 A }
  video-transmitter:
    system: analog
wiring:
  video-transmitter:
    power: 9V
`,
};
