/** An analog motor signal has to be calibrated. */
import { check } from '../check';

export default check({
  id: 'analog-signal-uncalibrated',
  group: 'signals',
  title: 'Analog motor signal',
  severity: 'information',
  needs: { signal: 'setup.motor-protocol' },
  judge({ signal }) {
    if (!['PWM', 'OneShot125', 'OneShot42', 'Multishot'].includes(signal.value)) return undefined;
    return {
      at: signal,
      message: `${signal.value} is analog: each ESC must be taught the throttle range, propellers off. DShot needs no calibration.`,
    };
  },
});

export const explanation = {
  why: 'Analog signals need the throttle range taught to each ESC, with propellers off, and again after a change of firmware.',
  remedy: 'Use DShot, or calibrate with propellers off.',
  source: 'documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
setup:
  motor-protocol: «OneShot125»
`,
  good: `
dryfit: build
name: Example
setup:
  motor-protocol: DShot300
`,
};
