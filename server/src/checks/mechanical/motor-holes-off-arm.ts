/** The motor's holes are not those of the arm. */
import { motorFit } from '../../plan/mounts';
import { check } from '../check';

export default check({
  id: 'motor-holes-off-arm',
  group: 'mechanical',
  title: 'Motor does not sit on the arm',
  severity: 'error',
  needs: { motor: 'motors.mount', arms: 'frame.motor-mounts' },
  judge({ motor, arms }) {
    const fits = arms.items.map((arm) => motorFit(motor.value, arm.value));
    if (fits.includes('same')) return undefined;
    const half = fits.includes('half') ? ' Only one pair of holes would meet, which is not enough.' : '';
    return {
      at: motor,
      with: [{ fact: arms, says: `the arms are drilled ${arms.text}` }],
      message: `The motor is ${motor.text}, the arms are drilled ${arms.text}.${half} Use a motor with the arms' pattern, or other arms.`,
    };
  },
});

export const explanation = {
  why: 'A motor held by fewer screws than it has holes works loose and tears off.',
  remedy: 'Take a motor with the pattern of the arms, or other arms.',
  source:
    'common practice: motor patterns give the distances of opposite holes; a slot takes every distance between its ends',
  bad: `
dryfit: build
name: Small motor on big arms
parts:
  frame:
    motor-mounts: 16x16 M3
  motors:
    mount: «16x19 M3»
`,
  good: `
dryfit: build
name: Slot takes both
parts:
  frame:
    motor-mounts: 16-19 M3
  motors:
    mount: 16x19 M3
`,
};
