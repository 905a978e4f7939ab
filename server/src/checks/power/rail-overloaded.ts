/** Devices take more from a regulator than it gives. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { amperes, apart } from '../words';

const nameOf = ({ device }: { readonly device: string }): string => device.replaceAll('-', ' ');

export default check({
  id: 'rail-overloaded',
  group: 'power',
  title: 'Regulator rail overloaded',
  severity: 'error',
  needs: { rails: 'worked.rails' },
  when: (craft) =>
    ['camera', 'video-transmitter', 'receiver', 'gps', 'lights', 'buzzer'].some((role) => role in craft.roles),
  judge({ rails }) {
    return rails.value.ledgers.flatMap((ledger) => {
      const { limit, sum, draws } = ledger;
      if (!limit || draws.length === 0 || !exceeds(sum, 0.8 * limit.value)) return [];
      const over = exceeds(sum, limit.value);
      const [made, gives] = apart(amperes, sum, limit.value);
      const assumed = draws.filter((draw) => !draw.known).map(nameOf);
      const largest = [...draws].sort((a, b) => b.current - a.current)[0]!;
      const list = draws.map((draw) => `${nameOf(draw)} ${amperes(draw.current)}`).join(', ');
      // A figure that nobody said may be wrong: it must not stop a sound build.
      const severity = over
        ? assumed.length > 0
          ? 'warning'
          : 'error'
        : assumed.length > 0
          ? 'information'
          : 'warning';
      return [
        {
          at: largest.rests ?? limit,
          with: [{ fact: limit, says: `the ${ledger.rail} rail gives ${limit.text}` }],
          severity,
          apart: ledger.rail,
          message: `The ${ledger.rail} rail gives ${gives} over all its pads; ${draws.length === 1 ? nameOf(largest) : `${list} make`} ${made}${over ? '. It will drop' : ', which leaves little'}${assumed.length > 0 ? ` (usual figures taken for ${assumed.join(', ')})` : ''}. Move the ${nameOf(largest)} to another supply.`,
        } as const,
      ];
    });
  },
});

export const explanation = {
  why: 'An overloaded regulator drops its voltage: video breaks up, the receiver restarts in flight.',
  remedy: 'Move a device to another rail or to a regulator of its own.',
  source: 'sum over all pads of the rail; four fifths as a margin is common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      5V:
        current: 1 A
  lights:
    leds: 20
    current-each: «55 mA»
    supply: 5 V
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      5V:
        current: 1 A
  lights:
    leds: 14
    current-each: 55 mA
    supply: 5 V
`,
};
