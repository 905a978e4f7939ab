/** More motors than the ESCs drive. */
import { motorCount } from '../../plan/weight';
import { check } from '../check';

export default check({
  id: 'esc-channels-too-few',
  group: 'signals',
  title: 'Too few ESC channels',
  severity: 'error',
  needs: { type: 'esc.type', motors: 'motors.kv' },
  may: { channels: 'esc.channels', count: 'esc.count' },
  judge({ type, motors, channels, count }, craft) {
    const wanted = motorCount(craft);
    const drives = type.value === 'single' ? (count?.value ?? wanted) : (channels?.value ?? 4) * (count?.value ?? 1);
    if (drives >= wanted) return undefined;
    return {
      at: type.value === 'single' ? (count ?? type) : (channels ?? type),
      with: [{ fact: motors, says: `${wanted} motors` }],
      message: `The ESC drives ${drives} motors; the craft has ${wanted}. Take one with a channel for each motor${type.value === 'single' ? `, or ${wanted} single ones` : ''}.`,
    };
  },
});

export const explanation = {
  why: 'A motor without an ESC channel does not turn.',
  remedy: 'Take an ESC with a channel for each motor, or one single ESC for each.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    kv: 1000
    count: 6
  esc:
    type: 4-in-1
    channels: «4»
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    kv: 1000
    count: 4
  esc:
    type: 4-in-1
    channels: 4
`,
};
