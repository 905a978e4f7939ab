/** Neither the flight controller nor the ESC tells the battery voltage. */

import { check } from '../check';

export default check({
  id: 'voltage-unseen',
  group: 'power',
  title: 'Nothing measures the battery voltage',
  severity: 'warning',
  needs: { sense: 'flight-controller.voltage-sense' },
  may: { telemetry: 'esc.telemetry', both: 'esc.bidirectional' },
  judge({ sense, telemetry, both }) {
    if (sense.value || telemetry?.value || both?.value) return undefined;
    return {
      at: sense,
      message:
        'Nothing on this craft measures the battery voltage. Packs get flown empty and are ruined. Connect a battery wire to a board that measures it, or use an ESC with telemetry.',
    };
  },
});

export const explanation = {
  why: 'Without a voltage on the screen packs are flown empty, and a lithium pack that is flown empty is ruined.',
  remedy: 'Take a board that measures the voltage, or an ESC with telemetry.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    voltage-sense: «no»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    voltage-sense: no
  esc:
    telemetry: yes
`,
};
