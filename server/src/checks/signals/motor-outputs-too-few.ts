/** More motors than the flight controller has signals for. */
import { motorCount } from '../../plan/weight';
import { check } from '../check';

export default check({
  id: 'motor-outputs-too-few',
  group: 'signals',
  title: 'Too few motor outputs',
  severity: 'error',
  needs: { outputs: 'flight-controller.motor-outputs', motors: 'motors.kv' },
  judge({ outputs, motors }, craft) {
    const wanted = motorCount(craft);
    if (outputs.value >= wanted) return undefined;
    return {
      at: outputs,
      with: [{ fact: motors, says: `${wanted} motors` }],
      message: `The flight controller puts out ${outputs.value} motor signals; the craft has ${wanted} motors. Take a board with ${wanted} outputs.`,
    };
  },
});

export const explanation = {
  why: 'A motor without a signal does not turn.',
  remedy: 'Take a board with more outputs on its socket.',
  source: 'common practice: newer F4 and F7 boards bring out four',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    geometry: hexa
  motors:
    kv: 1000
  flight-controller:
    motor-outputs: «4»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    geometry: x
  motors:
    kv: 1000
  flight-controller:
    motor-outputs: 4
`,
};
