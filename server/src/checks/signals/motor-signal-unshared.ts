/** Flight controller and ESC have no motor signal in common. */
import { check } from '../check';

export default check({
  id: 'motor-signal-unshared',
  group: 'signals',
  title: 'No motor signal in common',
  severity: 'error',
  needs: { controller: 'flight-controller.protocols', esc: 'esc.protocols' },
  judge({ controller, esc }) {
    const common = esc.items.filter((one) => controller.items.some((other) => other.value === one.value));
    if (common.length > 0) return undefined;
    return {
      at: esc,
      with: [{ fact: controller, says: `the flight controller sends ${controller.text}` }],
      message: `The ESC understands ${esc.text}; the flight controller sends ${controller.text}. No motor would turn. Flash the ESC with firmware for one of them, or take another ESC.`,
    };
  },
});

export const explanation = {
  why: 'Without a common signal no motor turns.',
  remedy: 'Flash ESC firmware that understands DShot, or choose a board that sends what the ESC understands.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    protocols: DShot300, DShot600
  esc:
    protocols: «OneShot125»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    protocols: DShot300, DShot600
  esc:
    protocols: OneShot125, DShot300
`,
};
