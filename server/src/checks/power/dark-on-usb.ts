/** Receiver or satellite receiver stay dark when only USB is plugged in. */
import { check } from '../check';

export default check({
  id: 'dark-on-usb',
  group: 'power',
  title: 'Dark on USB',
  severity: 'information',
  needs: { rails: 'worked.rails' },
  when: (craft) => Boolean(craft.roles.receiver || craft.roles.gps),
  judge({ rails }) {
    return rails.value.ledgers.flatMap((ledger) => {
      const dark =
        ledger.onUsb === false
          ? ledger.draws.filter((draw) => (draw.device === 'receiver' || draw.device === 'gps') && draw.rests)
          : [];
      return dark.map((draw) => ({
        at: draw.rests!,
        apart: draw.device,
        message: `The ${draw.device === 'gps' ? 'satellite receiver' : 'receiver'} hangs on the ${ledger.rail} rail, which is dark on USB. To bind it, plug the battery through a current limiter, propellers off, or use a rail that is live on USB.`,
      }));
    });
  },
});

export const explanation = {
  why: 'A receiver that is dark on USB cannot be bound or set up at the desk without the battery.',
  remedy: 'Use a pad that is live on USB, or plug the battery through a current limiter, propellers off.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      5V:
        current: 2 A
        on-usb: no
  receiver:
    current: «100 mA»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      5V:
        current: 2 A
        on-usb: yes
  receiver:
    current: 100 mA
`,
};
